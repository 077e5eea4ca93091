//! Hostile and broken scripts, class by class: each is stopped with a sentence at its place, and none panics.

use crate::common::{CARD, CATALOGUE, LISTS, faults, script, with_card};

/// Class, body, a part of the sentence, the text it points at; empty where several places in the loop are right.
type Trial = (&'static str, &'static str, &'static str, &'static str);

const ANSWER: &str = "at_least(it.figure(\"depth\"), it.register(\"body-length\") + it.limit(\"spare\"))";

const TRIALS: &[Trial] = &[
    ("time", "loop { }", "more than 100000 operations", "{"),
    ("time", "let n = 0; while n < 9000000000 { n += 1; }", "more than 100000 operations", ""),
    ("time", "for n in 0..9000000000000 { }", "more than 100000 operations", "{"),
    ("time", "let a = [0]; loop { a += a; a = [a[0]]; }", "more than 100000 operations", ""),
    ("time", "let a = [MANY]; loop { let b = a; }", "more than 100000 operations", "a"),
    ("memory", "let a = [1]; loop { a += a; }", "at most 256 things", "+="),
    ("memory", "let a = [1]; loop { a = [a, a]; }", "at most 256 things", "a"),
    ("memory", "let m = #{ a: 1 }; loop { m = #{ a: m, b: m }; }", "at most 256 things", "m"),
    ("memory", "let v = it.figure(\"depth\"); loop { v = v + v; }", "more than 4096 lines", "+"),
    ("nesting", "DEEP", "32 deep", "("),
    ("nesting", "LISTS_IN_LISTS", "32 deep", "["),
    ("strings", "let s = \"0123456789\"; loop { s += s; }", "text 16384 bytes", "+="),
    ("strings", "let s = \"a\"; loop { s = `${s}${s}`; }", "text 16384 bytes", "{"),
    ("recursion", "judge(it)", "there is no judge", "judge"),
    ("recursion", "let f = |x| x; f.call(1)", "cannot be read", ""),
    ("recursion", "let f = Fn(\"judge\"); f.call(it)", "'Fn' is switched off", "Fn"),
    ("types", "ANSWER && true", "answer stands where yes or no is expected", "at_least"),
    ("types", "if it.figure(\"depth\") { ANSWER }", "value stands where yes or no is expected", "."),
    ("types", "at_least(it.figure(\"depth\"), 0.4)", "the limit is a number here", "at_least"),
    ("types", "at_least(\"0.4 m\", it.limit(\"spare\"))", "what the design has is text here", "at_least"),
    (
        "types",
        "all_of([ANSWER, it.limit(\"spare\")])",
        "a value stands where an answer is expected",
        "all_of",
    ),
    ("types", "it.figure(\"depth\") + \"0.4 m\"", "there is no +", "+"),
    ("types", "it.figure(\"depth\") * (1 / 0)", "inf is no number", "*"),
    ("types", "it.figure(7)", "there is no figure", "figure"),
    ("types", "at_least(it.figure(\"depth\"), q(\"0.4 m\"))", "put them on the card as limits", "q"),
    (
        "dimension",
        "at_least(it.figure(\"depth\"), it.limit(\"spare\") * it.limit(\"spare\"))",
        "a length cannot be held against an area",
        "at_least",
    ),
    ("dimension", "it.figure(\"depth\") + 2", "a length cannot be added to a number", "+"),
    ("dimension", "min(it.figure(\"depth\"), 0.2)", "a length cannot be compared with a number", "min"),
    ("dimension", "let v = it.figure(\"depth\"); for n in 0..9 { v = v * v; } v", "beyond ±127", "*"),
    (
        "missing figure",
        "it.figure(\"depht\")",
        "no \"depht\" under \"figures\"; the nearest there is is \"depth\"",
        "figure",
    ),
    ("missing figure", "it.figure(\"clarity\")", "no \"clarity\" under \"figures\"", "figure"),
    ("missing figure", "it.limit(\"spares\")", "nearest there is is \"spare\"", "limit"),
    ("missing figure", "it.figur(\"depth\")", "nearest there is is \"figure\"", "figur"),
    ("missing figure", "let s = \"é µ 🐢\"; it.figure(\"nix\")", "no \"nix\" under \"figures\"", "figure"),
    ("missing figure", "it.depth", "nothing has parts here", "depth"),
    ("wrong answer", "", "gives back nothing", "judge"),
    ("wrong answer", "true", "gives back a yes or no", "judge"),
    ("wrong answer", "it.figure(\"depth\")", "gives back a value", "judge"),
    ("wrong answer", "[ANSWER]", "gives back a list", "judge"),
    ("wrong answer", "all_of([])", "no answers", "all_of"),
    (
        "wrong answer",
        "at_least(it.figure(\"depth\"), it.limit(\"spare\")); ANSWER",
        "not part of what judge gives back",
        "at_least",
    ),
    (
        "wrong answer",
        "at_least(it.figure(\"depth\"), it.limit(\"spare\"))",
        "does not rest on \"body-length\"",
        "\"body-length\"",
    ),
    ("output flood", "let a = ANSWER; loop { a = all_of([a, a]); }", "more than 1024 checks", "all_of"),
    ("output flood", "let a = ANSWER; loop { a = all_of([a]); }", "32 deep", "all_of"),
    ("output flood", "loop { ANSWER; }", "more than", ""),
    ("output flood", "loop { print(\"x\"); }", "'print' is switched off", "print"),
    ("output flood", "debug(it); ANSWER", "'debug' is switched off", "debug"),
    ("escape", "try { it.figure(\"none\") } catch { } ANSWER", "'try' is switched off", "try"),
    ("escape", "throw \"met\"", "'throw' is switched off", "throw"),
    ("escape", "let v = () ?? it.figure(\"depth\"); ANSWER", "'??' is switched off", "??"),
    ("escape", "it?.figure(\"depth\")", "'?.' is switched off", "?"),
    ("escape", "let a = [1]; a?[0]", "'?[' is switched off", "?"),
    ("escape", "import \"/etc/passwd\" as p; ANSWER", "'import' is switched off", "import"),
    ("escape", "eval(\"1\")", "'eval' is switched off", "eval"),
    ("escape", "exit(ANSWER)", "there is no exit", "exit"),
    ("escape", "switch it.figure(\"depth\") { _ => ANSWER }", "'switch' is switched off", "switch"),
    ("escape", "type_of(it) == \"x\"", "'type_of' is switched off", "type_of"),
    ("escape", "timestamp()", "there is no timestamp", "timestamp"),
    ("escape", "open_file(\"/etc/passwd\")", "there is no open_file", "open_file"),
    ("escape", "2 ** 3", "'**' is switched off", "**"),
    ("escape", "this.figure(\"depth\")", "'this' is switched off", "this"),
    ("escape", "unknown_name", "nothing is called \"unknown_name\" here", "unknown_name"),
];

fn body(raw: &str) -> String {
    let inner = match raw {
        "DEEP" => format!("let x = {}1{};", "(".repeat(20_000), ")".repeat(20_000)),
        "LISTS_IN_LISTS" => format!("let x = {}{};", "[".repeat(20_000), "]".repeat(20_000)),
        other => other.replace("MANY", &"v, ".repeat(200)).replace("ANSWER", ANSWER),
    };
    let first = if raw.contains("MANY") { "let v = it.figure(\"depth\");" } else { "" };
    format!("fn judge(it) {{\n    {first}{inner}\n}}")
}

#[test]
fn every_hostile_script_is_stopped_at_its_place() {
    let mut missed = Vec::new();
    for (class, raw, told, at) in TRIALS {
        let found = faults(&script(LISTS, &body(raw)));
        let hit =
            found.iter().any(|(message, place)| message.contains(told) && (at.is_empty() || place == at));
        if !hit || found.iter().any(|(message, _)| message.len() <= 15) {
            missed.push(format!("{class}: {raw}\n  expected {told:?} at {at:?}, found {found:?}"));
        }
    }
    assert!(missed.is_empty(), "{}", missed.join("\n"));
}

/// Every pair of kinds under every sign, so that none is silently false.
#[test]
fn nothing_is_compared() {
    let ours = ["it.figure(\"depth\")", "ANSWER", "it"];
    let plain = ["1", "0.5", "\"a\"", "true", "()", "[1]", "#{a: 1}", "'c'", "0..2"];
    for sign in ["<", "<=", ">", ">=", "==", "!="] {
        for mine in ours {
            for other in ours.iter().chain(&plain) {
                for pair in [format!("{mine} {sign} {other}"), format!("{other} {sign} {mine}")] {
                    let text = script(LISTS, &body(&format!("let b = {pair}; ANSWER")));
                    let found = faults(&text);
                    assert!(found.len() == 1 && found[0].0.contains("compared"), "{pair}: {found:?}");
                    assert_eq!(found[0].1, sign, "{pair}");
                }
            }
        }
    }
}

/// Comparisons the language makes without a sign of its own.
#[test]
fn nothing_is_compared_behind_the_back() {
    for hidden in [
        "let b = [it.figure(\"depth\")] == [it.figure(\"depth\")]",
        "let b = it.figure(\"depth\") in [it.figure(\"depth\")]",
        "let b = #{a: it.figure(\"depth\")} == #{a: it.figure(\"depth\")}",
        "let b = !it.figure(\"depth\")",
        "let b = it.figure(\"depth\") || true",
        "while it.figure(\"depth\") { }",
    ] {
        assert!(!faults(&script(LISTS, &body(&format!("{hidden}; ANSWER")))).is_empty(), "{hidden}");
    }
}

#[test]
fn what_stands_beside_the_function_is_refused() {
    let judge = format!("fn judge(it) {{ {ANSWER} }}");
    for (text, told) in [
        (format!("{judge}\nfn other(x) {{ x }}"), "one function"),
        (format!("let x = 1;\n{judge}"), "outside the function"),
        (format!("const X = 1;\n{judge}"), "outside the function"),
        (format!("{judge}\n42"), "outside the function"),
        (format!("if true {{ }}\n{judge}"), "outside the function"),
        (judge.replace("judge(it)", "judge(it, more)"), "one function"),
        (judge.replace("judge(it)", "juge(it)"), "one function"),
        (judge.replace("it", "that"), "one function"),
        (format!("{judge} // }}"), "outside the function"),
        (format!("{judge}\n{{ }}"), "outside the function"),
        (format!("{judge}\nlet x = #{{ }}"), "outside the function"),
        (String::new(), "one function"),
        (format!("private {judge}"), "'private'"),
    ] {
        let found = faults(&script(LISTS, &text));
        assert!(found.len() == 1 && found[0].0.contains(told), "{text}: {found:?}");
    }
}

/// Change to a sound card, a part of the sentence, the text it points at.
#[test]
fn a_broken_card_is_refused_at_its_place() {
    let card = CARD.replace("LISTS", LISTS);
    for (from, to, told, at) in [
        ("\"demand\"", "\"demands\"", "nearest there is is \"demand\"", "\"demands\""),
        ("\"shall\"", "\"must\"", "not among the words that may stand here: shall, should", "\"must\""),
        (
            "\"shall\"",
            "\"shall\", \"demand\": \"should\"",
            "\"demand\" stands in the card twice",
            "\"demand\"",
        ),
        ("\"asks\": \"a\",", "", "the card lacks \"asks\" here", "}"),
        ("\"asks\": \"a\",", "\"asks\": 1,", "invalid type", ""),
        ("\"title\": \"A trial\",", "", "the card lacks \"title\" here", "}"),
        (
            "\"about\": \"pool-group\"",
            "\"about\": \"pond-group\"",
            "nearest there is is \"pool-group\"",
            "\"pond-group\"",
        ),
        ("\"stage\": \"concept\"", "\"stage\": \"concpt\"", "nearest there is is \"concept\"", "\"concpt\""),
        ("\"harm\"", "\"harms\"", "nearest there is is \"harm\"", "\"harms\""),
        ("\"id\": \"trial\"", "\"id\": \"Trial 1\"", "not made of a-z", "\"Trial 1\""),
        ("\"id\": \"trial\"", "\"id\": \"other\"", "its file \"trial\"", "\"other\""),
        ("[\"depth\"]", "[\"depht\"]", "nearest there is is \"depth\"", "\"depht\""),
        ("[\"depth\"]", "[\"depth\", \"depth\"]", "stands twice", "\"depth\""),
        ("[\"body-length\"]", "[\"body-lenght\"]", "nearest there is is \"body-length\"", "\"body-lenght\""),
        ("\"0.4 m\"", "\"0,4 m\"", "write \"0.4 m\"", "\"0,4 m\""),
        ("\"0.4 m\"", "\"0.4 fathoms\"", "cannot be read as a quantity", "\"0.4 fathoms\""),
        ("\"0.4 m\"", "\"0.4 to 0.6 m\"", "several numbers", "\"0.4 to 0.6 m\""),
        ("\"house standard\"", "\"\"", "names its source", ""),
        ("\"expected\": \"short\"", "\"expected\": \"met\"", "one that falls short", "\"examples\""),
        (
            "\"about\": \"pool-group\"",
            "\"about\": \"circuit\"",
            "about \"pool\", which \"circuit\" has none of",
            "\"depth\"",
        ),
        ("\"about\": \"pool-group\"", "\"about\": \"pool\"", "\"pool\" has no group", "\"body-length\""),
        (
            "\"consequence\"",
            "\"matter\": \"wellfare\", \"consequence\"",
            "nearest there is is \"welfare\"",
            "\"wellfare\"",
        ),
        ("\"a\"", "\"a */ b\"", "\"*/\" ends the card", ""),
    ] {
        assert!(card.contains(from), "{from} stands in the card");
        let text = with_card(&card.replacen(from, to, 1), &body("ANSWER"));
        let found = faults(&text);
        let hit =
            found.iter().any(|(message, place)| message.contains(told) && (at.is_empty() || place == at));
        assert!(hit, "{to}\n  expected {told:?} at {at:?}, found {found:?}");
    }
}

#[test]
fn texts_that_are_no_script_are_refused() {
    let long = format!("/* {{}} */{}", "\n".repeat(70_000));
    for text in [
        "",
        "fn judge(it) { }",
        "/* {",
        "/* [] */",
        "// {}\nfn judge(it) { }",
        "\u{feff}/* {} */",
        "é",
        &long,
    ] {
        let found = faults(text);
        assert_eq!(found.len(), 1, "{text:.40}: {found:?}");
    }
}

/// 4 000 texts mutated from a sound script by a xorshift generator: none may panic, every place lies in its text.
#[test]
fn mutated_scripts_never_panic() {
    let sound = script(
        LISTS,
        &body(
            "let a = ANSWER; only_if(a, any_of([a, within(it.figure(\"depth\"), it.limit(\"spare\"), it.limit(\"spare\") * 2)]))",
        ),
    );
    assert_eq!(faults(&sound), []);
    let bits: Vec<char> = "{}[]()\"*/+-<>=!?.,:;|&#$`é\n\\0159aeit ".chars().collect();
    let mut state: u64 = 0x9E37_79B9_7F4A_7C15;
    let mut next = move |below: usize| {
        state ^= state << 13;
        state ^= state >> 7;
        state ^= state << 17;
        (state % below as u64) as usize
    };
    for _ in 0..4_000 {
        let mut text: Vec<char> = sound.chars().collect();
        for _ in 0..=next(3) {
            let at = next(text.len());
            match next(3) {
                0 => text.insert(at, bits[next(bits.len())]),
                1 => drop(text.remove(at)),
                _ => text[at] = bits[next(bits.len())],
            }
        }
        let text: String = text.into_iter().collect();
        if let Err(faults) = haulout_script::compile("trial.rhai", &text, CATALOGUE) {
            assert!(!faults.is_empty());
            for fault in faults {
                let span = fault.span.start as usize..fault.span.end as usize;
                assert!(text.get(span).is_some(), "{fault:?} in\n{text}");
            }
        }
    }
}

/// Everything that can be put inside itself, until the text is full: nothing may overflow the native stack.
#[test]
fn what_is_nested_to_the_end_of_the_text_is_refused_or_read() {
    const ROOM: usize = 55_000;
    for (open, middle, close) in [
        ("(", "1", ")"),
        ("[", "1", "]"),
        ("#{a:", "1", "}"),
        ("{", "1;", "}"),
        ("if true {", "1;", "}"),
        ("if true {} else ", "{}", ""),
        ("if false {} else if true ", "{}", ""),
        ("while true {", "1;", "}"),
        ("loop {", "break;", "}"),
        ("do {", "1;", "} while true;"),
        ("for n in 0..1 {", "1;", "}"),
        ("!", "true", ""),
        ("-", "1", ""),
        ("+", "1", ""),
        ("1 + ", "1", ""),
        ("1 - (", "1", ")"),
        ("true && ", "true", ""),
        ("true || ", "true", ""),
        ("1 == ", "1", ""),
        ("x = ", "1", ""),
        ("let x = ", "1", ""),
        ("it.a", "", ""),
        (".a", "", ""),
        ("it.figure(", "1", ")"),
        ("min(1, ", "1", ")"),
        ("[0]", "", ""),
        ("x[", "0", "]"),
        ("`${", "1", "}`"),
        ("/*", "", "*/"),
        ("return ", "1", ""),
        ("return {", "1", "}"),
        ("fn judge(it) {", "1", "}"),
        ("|x| ", "1", ""),
        ("1;", "", ""),
        (";", "", ""),
        ("0..", "1", ""),
        ("1 in ", "[1]", ""),
        ("let x = 1;", "", ""),
    ] {
        let times = ROOM / (open.len() + close.len());
        let deep = format!("{}{middle}{}", open.repeat(times), close.repeat(times));
        let in_places = ["", "let x = 1; ", "let x = ", "let x = it"];
        for inner in in_places.map(|before| format!("{before}{deep};")) {
            let found = faults(&script(LISTS, &body(&inner)));
            assert!(
                found.iter().all(|(message, _)| !message.contains("divide the rule")),
                "{open} is read at all"
            );
        }
    }
}

/// Comments before the function and inside it are part of nothing.
#[test]
fn comments_may_stand_before_the_function() {
    let text = format!(
        "// one {{\n/* two fn judge(it) {{ */\n\nfn judge ( it )\n{{ // three }}\n {ANSWER} /* four }} */ }}"
    );
    assert_eq!(faults(&script(LISTS, &text)), []);
}

#[test]
fn a_function_too_many_is_pointed_at() {
    let judge = format!("fn judge(it) {{ {ANSWER} }}");
    for (text, place) in [
        (format!("{judge}\nfn other(x) {{ x }}"), "other"),
        (judge.replace("judge(it)", "judge(it, more)"), "judge"),
        (judge.replace("judge(it)", "juge(it)"), "juge"),
        (format!("let x = 1;\n{judge}"), "let"),
    ] {
        assert_eq!(faults(&script(LISTS, &text))[0].1, place, "{text}");
    }
}
