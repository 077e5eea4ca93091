//! Annexes and specifications from their texts to a ruleset, or to everything that is wrong with them.

mod annexes {
    mod common;
    mod faults;
    mod register;
    mod resolved;
    mod specified;
    mod two_way;
}
