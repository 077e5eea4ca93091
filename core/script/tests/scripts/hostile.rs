//! Hostile and broken scripts, class by class: each is stopped with a sentence at its place, and none panics.

use crate::common::{CATALOGUE, LISTS, faults, script};
use crate::trials::{ANSWER, CLASSES, body, trials};

#[test]
fn every_hostile_script_is_stopped_at_its_place() {
    let mut missed = Vec::new();
    for trial in trials() {
        let (told, at) = (&trial.told, &trial.at);
        let found = faults(&trial.text);
        let right =
            |(message, place): &(String, String)| message.contains(told) && (at.is_empty() || place == at);
        if !found.iter().any(right) || found.iter().any(|(message, _)| message.len() <= 15) {
            let (class, what) = (&trial.class, &trial.what);
            missed.push(format!("{class}: {what}\n  expected {told:?} at {at:?}, found {found:?}"));
        }
    }
    assert!(missed.is_empty(), "{}", missed.join("\n"));
}

#[test]
fn every_class_of_hostile_scripts_is_tried() {
    let all = trials();
    for class in CLASSES {
        let count = all.iter().filter(|t| t.class == class).count();
        assert!(count >= 5, "only {count} scripts try {class}");
    }
    assert!(all.iter().all(|t| CLASSES.contains(&&*t.class)), "every trial has a class");
    assert!(all.len() >= 60, "only {} trials", all.len());
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
