//! The example designs are read without a problem and give the answers they must give.

use haulout_tests::{examples, load, ruleset, said};

#[test]
fn every_example_is_read_and_answered() {
    let ruleset = ruleset();
    for (name, text) in examples() {
        let loaded = load(&text).unwrap_or_else(|problems| panic!("{name}: {problems:#?}"));
        let said = said(&loaded, &ruleset, &[]);
        for (key, answer) in &said {
            eprintln!("{name}: {key}: {} {:?}", answer.outcome, answer.numbers);
        }
    }
}
