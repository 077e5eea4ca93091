//! What RFC 8259 allows and what it does not, written out from its grammar, section by section.

use haulout_document::{Limits, read};

/// Sections 2 to 7: texts that have to be accepted.
const ACCEPTED: &[&str] = &[
    // Section 2: white space, any value as the whole text.
    "null",
    "true",
    "false",
    " null",
    "null ",
    "\tnull",
    "\nnull",
    "\r\nnull\r\n",
    " \t\n\r[ \t\n\r] \t\n\r",
    // Section 3 and 4: objects.
    "{}",
    "{ }",
    r#"{"a":1}"#,
    r#"{ "a" : 1 }"#,
    r#"{"a":1,"b":2}"#,
    r#"{"":0}"#,
    r#"{"a":{}}"#,
    r#"{"a":[]}"#,
    r#"{"a":null,"b":true,"c":false}"#,
    r#"{"\u0061":1}"#,
    r#"{"a":1,"A":2}"#,
    r#"{"a b":1}"#,
    r#"{"é":1}"#,
    r#"{"\"":1}"#,
    "{\n\"a\"\n:\n1\n,\n\"b\"\n:\n2\n}",
    // Section 5: arrays.
    "[]",
    "[ ]",
    "[1]",
    "[1,2]",
    "[ 1 , 2 ]",
    "[[]]",
    "[[],[]]",
    "[{}]",
    "[null,1,\"a\",{},[]]",
    "[\"\"]",
    "[\n1\n]",
    // Section 6: numbers.
    "0",
    "-0",
    "1",
    "-1",
    "10",
    "123456789",
    "0.0",
    "-0.0",
    "0.5",
    "1.25",
    "-1.25",
    "1e0",
    "1E0",
    "1e+0",
    "1e-0",
    "1e5",
    "1E+5",
    "1E-5",
    "0e1",
    "0e00",
    "1.5e10",
    "-1.5E-10",
    "1e01",
    "100000000000000000000",
    "1e308",
    "1e-999",
    // Section 7: strings.
    r#""""#,
    r#""a""#,
    r#"" ""#,
    r#""\"""#,
    r#""\\""#,
    r#""\/""#,
    r#""/""#,
    r#""\b\f\n\r\t""#,
    r#""\u0000""#,
    r#""\u00e9""#,
    r#""\u00E9""#,
    r#""\uD834\uDD1E""#,
    r#""\uFFFF""#,
    "\"é\"",
    "\"𝄞\"",
    "\"\u{7f}\"",
    "\"\u{2028}\"",
    "\"'\"",
    "\"// no comment\"",
    "\"/* nor this */\"",
    r#""\\u0041""#,
];

/// Texts that have to be refused, slips included.
const REFUSED: &[&str] = &[
    // Section 2.
    "",
    " ",
    "\n",
    "null null",
    "1 2",
    "[] []",
    "{}{}",
    "nul",
    "nulll",
    "True",
    "FALSE",
    "None",
    "undefined",
    "abc",
    "\u{b}null",
    "\u{c}null",
    "\u{a0}null",
    "\u{feff}null",
    "// x\n1",
    "1 // x",
    "/* x */ 1",
    "1 /* x */",
    "/",
    "1/2",
    "# 1",
    // Section 4.
    "{",
    "}",
    r#"{"a"}"#,
    r#"{"a":}"#,
    r#"{"a":1,}"#,
    r#"{,"a":1}"#,
    r#"{"a":1,,"b":2}"#,
    r#"{"a" 1}"#,
    r#"{"a"::1}"#,
    r#"{a:1}"#,
    r#"{'a':1}"#,
    r#"{1:1}"#,
    r#"{null:1}"#,
    r#"{"a":1 "b":2}"#,
    r#"{"a":1"#,
    r#"{"a":1]"#,
    r#"{"a":1,"#,
    r#"{"a"=1}"#,
    r#"{"a":1;"b":2}"#,
    r#"{[1]:1}"#,
    r#"{"a":1,"a":2}"#,
    "{,}",
    // Section 5.
    "[",
    "]",
    "[,]",
    "[1,]",
    "[,1]",
    "[1,,2]",
    "[1 2]",
    "[1",
    "[1,",
    "[1}",
    "[1;2]",
    "[1:2]",
    "[]]",
    "[\"a\"\"b\"]",
    // Section 6.
    "+1",
    "+0",
    "01",
    "-01",
    "00",
    ".5",
    "-.5",
    "5.",
    "-5.",
    "1.e5",
    "1e",
    "1e+",
    "1E-",
    "e5",
    "-",
    "--1",
    "+-1",
    "1-",
    "0x10",
    "1_000",
    "1,5",
    "1.2.3",
    "NaN",
    "-NaN",
    "Infinity",
    "-Infinity",
    "inf",
    "1e5.5",
    "1a",
    "- 1",
    "1e999",
    "１",
    // Section 7.
    "\"",
    "\"a",
    "'a'",
    "'",
    "\"\\\"",
    r#""\a""#,
    r#""\'""#,
    r#""\x41""#,
    r#""\u""#,
    r#""\u12""#,
    r#""\u12g4""#,
    r#""\U0041""#,
    r#""\u{41}""#,
    r#""\ud800""#,
    r#""\udc00""#,
    r#""\ud800\u0041""#,
    r#""\udd1e\ud834""#,
    "\"\n\"",
    "\"\t\"",
    "\"\r\"",
    "\"\0\"",
    "\"\u{1f}\"",
    "\"a\"b",
    "\"\\",
    "\"\\u",
];

#[test]
fn what_the_standard_allows_is_accepted() {
    for text in ACCEPTED {
        let reading = read(text.as_bytes(), &Limits::default());
        assert!(reading.problems.is_empty() && reading.tree.is_some(), "{text:?}: {:?}", reading.problems);
    }
}

#[test]
fn what_the_standard_does_not_allow_is_refused_at_a_place_inside_the_text() {
    for text in REFUSED {
        let reading = read(text.as_bytes(), &Limits::default());
        assert!(!reading.problems.is_empty(), "{text:?} was accepted");
        for problem in reading.problems {
            let (start, end) = (problem.span.start as usize, problem.span.end as usize);
            assert!(text.get(start..end).is_some(), "{text:?}: {start} to {end}");
            assert!(problem.message.ends_with(['.', ')']), "{}", problem.message);
        }
    }
}

#[test]
fn the_lists_are_long_enough_to_mean_something() {
    assert!(ACCEPTED.len() >= 75 && REFUSED.len() >= 110, "{} and {}", ACCEPTED.len(), REFUSED.len());
}

#[test]
fn bytes_that_are_no_utf8_are_told_by_their_place() {
    for (bytes, at) in
        [(&b"\"\xff\""[..], 1), (b"[\"\xc3\"]", 2), (b"\"\xed\xa0\x80\"", 1), (b"\"\xc0\xaf\"", 1)]
    {
        let problems = read(bytes, &Limits::default()).problems;
        assert_eq!(problems.len(), 1);
        assert_eq!(problems[0].span.start, at);
    }
    let wide = read(b"\xff\xfe{\0}\0", &Limits::default()).problems;
    assert!(wide[0].message.contains("UTF-16"));
}
