//! A review: every rule asked about every subject, under every authority it answers to.

use haulout_model::{About, Design, Missing, MissingKind, Reference, Stage, Subject, Walk};
use haulout_register::{Matter, Register};
use haulout_sheet::{Book, Case, Gap, GapKind, Gaps, Known, Substitution};

use crate::answer::{Answer, Outcome};
use crate::card::Demand;
use crate::check::{Check, Verdict};
use crate::rule::Rule;
use crate::ruleset::Ruleset;
use crate::specification::held_to;
use crate::variance::covering;

/// What a review is made for.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Options {
    /// The stage, when it is not the design's own.
    pub stage: Option<Stage>,
    /// The day, `2026-11-25`: variances run out.
    pub on: String,
}

/// What a process should say at its end.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Status {
    /// Nothing required falls short or stays open.
    Clear = 0,
    /// Something does.
    Open = 1,
    /// It could not be reviewed.
    Impossible = 2,
}

/// The answers about one design, with the book they were worked in.
pub struct Review<'d> {
    /// The lines.
    pub book: Book<'d>,
    /// The rules.
    pub ruleset: &'d Ruleset,
    /// The stage it was held to.
    pub stage: Stage,
    /// The answers, rule by rule, subject by subject.
    pub answers: Vec<Answer>,
}

impl Review<'_> {
    /// Whether a required answer falls short or stays open.
    pub fn status(&self) -> Status {
        let open = self.answers.iter().any(|a| {
            a.owed
                && self.ruleset.rules[a.rule].card.demand == Demand::Shall
                && matches!(a.outcome, Outcome::Short | Outcome::NotAssessed)
        });
        if open { Status::Open } else { Status::Clear }
    }
}

/// Reviews a design; substitutions make it a *what if* on the same design.
pub fn review<'d>(
    design: &'d Design,
    ruleset: &'d Ruleset,
    substitutions: &'d [Substitution],
    options: &Options,
) -> Review<'d> {
    review_part(design, ruleset, substitutions, options, |_| true)
}

/// Reviews a design by some rules of a ruleset only, as `review` does by all: the answers name the rules by their positions in the whole.
/// Several parts of one review may be worked side by side, each in a book of its own.
pub fn review_part<'d>(
    design: &'d Design,
    ruleset: &'d Ruleset,
    substitutions: &'d [Substitution],
    options: &Options,
    wanted: impl Fn(&Rule) -> bool,
) -> Review<'d> {
    let count = ruleset.rules.iter().filter(|rule| wanted(rule)).count();
    let book = Book::for_rules(design, &ruleset.limits, substitutions, count);
    let stage = options.stage.or(ruleset.stage()).unwrap_or_else(|| design.project.stage());
    let mut answers = Vec::with_capacity(4 * count);
    let mut walks: Vec<(About, Walk)> = Vec::new();
    for (position, rule) in ruleset.rules.iter().enumerate().filter(|(_, rule)| wanted(rule)) {
        let asking = Asking { book: &book, rule, position, stage, on: &options.on };
        let walk = walked(&mut walks, rule.card.about, design);
        for authority in authorities(ruleset, design, rule) {
            // Where only some subjects can be told, what keeps the others from it is not passed over.
            let untold = walk.missing.iter().any(|missing| missing.kind != MissingKind::None);
            if walk.subjects.is_empty() || untold {
                answers.push(asking.answer(None, &authority, none_of(&walk.missing)));
            }
            answers.extend(walk.subjects.iter().map(|at| asking.subject(*at, &authority)));
        }
    }
    Review { book, ruleset, stage, answers }
}

/// One answer of a review asked for again with something changed: the same rule, subject and authority, and nothing else.
/// None where the authority is not among those the rule answers to.
pub fn again(
    design: &Design,
    ruleset: &Ruleset,
    substitutions: &[Substitution],
    options: &Options,
    answer: (usize, Subject, Option<&str>),
) -> Option<Answer> {
    let (position, subject, authority) = answer;
    let book = Book::new(design, &ruleset.limits, substitutions);
    let rule = &ruleset.rules[position];
    let stage = options.stage.or(ruleset.stage()).unwrap_or_else(|| design.project.stage());
    let chosen = authorities(ruleset, design, rule).into_iter().find(|chosen| {
        chosen.position().and_then(|at| book.register().authority(at)).map(|a| a.id) == authority
    })?;
    Some(Asking { book: &book, rule, position, stage, on: &options.on }.subject(subject, &chosen))
}

/// The subjects of a kind, walked through once for all rules about it.
fn walked<'w>(walks: &'w mut Vec<(About, Walk)>, about: About, design: &Design) -> &'w Walk {
    let known = walks.iter().position(|(of, _)| *of == about);
    let at = known.unwrap_or_else(|| {
        walks.push((about, about.walk(design)));
        walks.len() - 1
    });
    &walks[at].1
}

/// An authority a rule answers to.
#[derive(Debug, Clone)]
enum Chosen {
    /// Practice: no authority.
    Practice,
    /// A position in the table of authorities.
    Table(u16),
    /// The file says that the design is held to none in this matter.
    Nobody,
    /// None is chosen, or one that the table does not know.
    Unknown(Gap),
    /// One that an annex brought, which no built-in rule knows the requirements of.
    Added(u16, Gap),
}

impl Chosen {
    const fn position(&self) -> Option<u16> {
        match self {
            Chosen::Table(at) | Chosen::Added(at, _) => Some(*at),
            _ => None,
        }
    }
}

fn authorities(ruleset: &Ruleset, design: &Design, rule: &Rule) -> Vec<Chosen> {
    let Some(matter) = rule.card.matter else {
        return vec![Chosen::Practice];
    };
    let register = ruleset.limits.register();
    let of = |name: &str, gap: &dyn Fn(String) -> Gap| known(register, rule, (matter, name), gap);
    if let Some(ids) = ruleset.specified(matter) {
        let nowhere = |what: String| Gap::of(GapKind::NoAuthority, what, Vec::new());
        let chosen: Vec<Chosen> = ids.iter().map(|id| of(id, &nowhere)).collect();
        return if chosen.is_empty() { vec![Chosen::Nobody] } else { chosen };
    }
    let list = held_to(design, matter);
    let named = |reference: &Reference| {
        let at = |what: String| Gap::at(GapKind::NoAuthority, what, reference.seat().origin);
        of(reference.name(), &at)
    };
    match list.missing() {
        Some(missing) if missing.kind == MissingKind::None => vec![Chosen::Nobody],
        Some(missing) => {
            let what = format!("no authority is chosen for {}", matter.name());
            vec![Chosen::Unknown(Gap::at(GapKind::NoAuthority, what, missing.origin))]
        }
        None => list.items().iter().map(named).collect(),
    }
}

/// An authority by its name; `gap` makes a gap of what there is to say where no rule knows it.
fn known(
    register: &Register,
    rule: &Rule,
    (matter, name): (Matter, &str),
    gap: &dyn Fn(String) -> Gap,
) -> Chosen {
    let of = matter.name();
    match register.position(matter, name) {
        None => Chosen::Unknown(gap(format!("the table of authorities has no rules of \"{name}\" for {of}"))),
        Some(at) if register.is_added(at) && rule.annex.is_none() => {
            let what =
                format!("\"{name}\" came with an annex, and this built-in rule does not know what it asks");
            Chosen::Added(at, gap(what))
        }
        Some(at) => Chosen::Table(at),
    }
}

/// No subjects: not assessed when a list is not stated, does not apply when it is said to be empty.
fn none_of(missing: &[Missing]) -> Known<Check> {
    let open: Vec<Gap> =
        missing.iter().filter(|m| m.kind != MissingKind::None).map(|m| Gap::from(*m)).collect();
    if open.is_empty() { Ok(Check::AllOf(Vec::new())) } else { Err(Gaps(open)) }
}

struct Asking<'a, 'd> {
    book: &'a Book<'d>,
    rule: &'a Rule,
    position: usize,
    stage: Stage,
    on: &'a str,
}

impl Asking<'_, '_> {
    fn case(&self, authority: &Chosen) -> Case {
        Case { authority: authority.position(), ..self.rule.card.case }
    }

    fn subject(&self, at: Subject, authority: &Chosen) -> Answer {
        let known = match authority {
            Chosen::Practice | Chosen::Table(_) => {
                self.rule.judge.judge(self.book.sheet(self.case(authority)), at)
            }
            Chosen::Nobody => Ok(Check::AllOf(Vec::new())),
            Chosen::Unknown(gap) | Chosen::Added(_, gap) => Err(gap.clone().into()),
        };
        self.answer(Some(at), authority, known)
    }

    fn answer(&self, subject: Option<Subject>, authority: &Chosen, known: Known<Check>) -> Answer {
        let verdict = Verdict::of(self.book, known);
        let card = &self.rule.card;
        let position = authority.position();
        let design = self.book.design();
        let open = matches!(verdict.outcome, Outcome::Short | Outcome::NotAssessed);
        let variance = if open && !design.variances.items().is_empty() {
            let key = || subject.map_or_else(|| card.about.name().to_owned(), |s| s.key(design));
            let named = position.and_then(|at| self.book.register().authority(at)).map(|a| a.id);
            covering(design, &card.id, key, named, self.on)
        } else {
            None
        };
        let accepted = variance.is_some_and(|(_, expired)| !expired);
        Answer {
            rule: self.position,
            subject,
            authority: position,
            case: self.case(authority),
            outcome: if accepted { Outcome::Variance } else { verdict.outcome },
            without_variance: verdict.outcome,
            owed: self.stage >= card.stage,
            deciding: verdict.deciding,
            margin: verdict.margin,
            lines: verdict.lines,
            beside: verdict.beside,
            gaps: verdict.gaps.map(|g| g.0).unwrap_or_default(),
            variance: variance.map(|(at, _)| at),
            expired: variance.is_some_and(|(_, expired)| expired),
        }
    }
}
