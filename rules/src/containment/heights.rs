//! The heights that hold an animal, shared by the rules of walls and of open doors; they are limits of the first.

use haulout_figures::barrier::height::Asked;
use haulout_quantity::{Basis, Dimension};
use haulout_sheet::{Limit, Tighter};

/// All of them, for the card of the rule that owns them.
pub(super) static ALL: &[&Limit] = &[&LENGTHS, &ALLOWANCE, &LEAST, &SMALL_END, &SMALL, &LARGE_END, &LARGE];

pub(super) static ASKED: Asked = Asked {
    lengths: &LENGTHS,
    allowance: &ALLOWANCE,
    least: &LEAST,
    crocodilians: &[(&SMALL_END, &SMALL), (&LARGE_END, &LARGE)],
};

static LENGTHS: Limit = Limit {
    rule: "barrier-height",
    name: "shell-lengths",
    row: "",
    what: "shell lengths of a turtle",
    value: 2.0,
    unit: "",
    dimension: Dimension::NUMBER,
    tighter: Tighter::Higher,
    basis: Basis::Reported,
    source: "keepers' guides (jiyushe.com; thatbiz.org): a wall of at least twice the shell length; no standard for it is known",
};

static ALLOWANCE: Limit = Limit {
    rule: "barrier-height",
    name: "allowance",
    row: "",
    what: "added to the shell lengths of a turtle",
    value: 0.10,
    unit: "mm",
    dimension: Dimension::LENGTH,
    tighter: Tighter::Higher,
    basis: Basis::CommonPractice,
    source: "keepers' practice: twice the shell length has been climbed, a hand's breadth is added",
};

static LEAST: Limit = Limit {
    rule: "barrier-height",
    name: "least",
    row: "",
    what: "least height for any turtle",
    value: 0.30,
    unit: "m",
    dimension: Dimension::LENGTH,
    tighter: Tighter::Higher,
    basis: Basis::Reported,
    source: "Woltz, Gibbs & Ducey 2008, Biol. Conserv. 141:2745-2750 (abstract): 0.3 m held painted turtles",
};

static SMALL_END: Limit = Limit {
    rule: "barrier-height",
    name: "class-end",
    row: "to 1.5 m",
    what: "upper end of the class of small crocodilians, total length",
    value: 1.5,
    unit: "m",
    dimension: Dimension::LENGTH,
    tighter: Tighter::Lower,
    basis: Basis::CommonPractice,
    source: "keepers' practice",
};

static SMALL: Limit = Limit {
    rule: "barrier-height",
    name: "height",
    row: "to 1.5 m",
    what: "height for small crocodilians",
    value: 1.2,
    unit: "m",
    dimension: Dimension::LENGTH,
    tighter: Tighter::Higher,
    basis: Basis::CommonPractice,
    source: "keepers' practice",
};

static LARGE_END: Limit = Limit {
    rule: "barrier-height",
    name: "class-end",
    row: "over 1.5 m",
    what: "upper end of the class of large crocodilians, total length",
    value: 4.0,
    unit: "m",
    dimension: Dimension::LENGTH,
    tighter: Tighter::Lower,
    basis: Basis::CommonPractice,
    source: "keepers' practice; longer animals need a barrier designed for them",
};

static LARGE: Limit = Limit {
    rule: "barrier-height",
    name: "height",
    row: "over 1.5 m",
    what: "height for large crocodilians",
    value: 1.5,
    unit: "m",
    dimension: Dimension::LENGTH,
    tighter: Tighter::Higher,
    basis: Basis::CommonPractice,
    source: "keepers' practice",
};
