//! An answer told: numbers in a unit, working, places, gaps; what every output is made from.

use haulout_document::Tree;
use haulout_engine::{Answer, Deciding, Outcome, Review, Side};
use haulout_model::{Role, Standing, Subject};
use haulout_quantity::{Basis, Dimension, System, Unit, print};
use haulout_sheet::{Book, Case, Gap, LineId, Made, Roots};

use crate::lever::{Lever, levers};
use crate::place::{Place, first_place_of_gap, place, places_of, places_of_gap, sorted};
use crate::promise::{Promise, promises};
use crate::subject::{named, sizes};
use crate::units::{difference, system, unit_of};
use crate::working::{DIGITS, Shown, step, working};

/// A root that stands in no design: a register value, a default, a limit.
#[derive(Debug, Clone, PartialEq)]
pub struct Root {
    /// `register`, `default` or `limit`.
    pub kind: &'static str,
    /// What it is.
    pub what: &'static str,
    /// Printed with its unit.
    pub value: String,
    /// Where it stands.
    pub source: &'static str,
    /// How well it is known.
    pub basis: Basis,
    /// Position of the annex it came from; none when it is built in.
    pub annex: Option<u16>,
}

/// A gap told.
#[derive(Debug, Clone, PartialEq)]
pub struct ToldGap {
    /// Why.
    pub kind: &'static str,
    /// What.
    pub what: String,
    /// Where it stands or would stand, and what led to it.
    pub places: Vec<Place>,
    /// Where a person looks first to close it.
    pub first: Option<Place>,
}

impl ToldGap {
    pub(crate) fn of(gap: &Gap, tree: &Tree, book: &Book<'_>) -> Self {
        ToldGap {
            kind: gap.kind.name(),
            what: gap.what.to_string(),
            places: places_of_gap(tree, book, gap),
            first: first_place_of_gap(tree, book, gap),
        }
    }
}

/// The numbers of an answer in its unit.
#[derive(Debug, Clone, PartialEq)]
pub struct Numbers {
    /// The unit.
    pub unit: &'static Unit,
    /// What the design has.
    pub have: f64,
    /// At least this.
    pub low: Option<f64>,
    /// At most this.
    pub high: Option<f64>,
    /// Positive when met, negative when short.
    pub margin: Option<f64>,
    /// The same printed, with as many digits as tell them apart.
    pub printed: Printed,
}

/// Numbers printed with their unit.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Printed {
    /// What the design has.
    pub have: String,
    /// What is asked.
    pub asks: String,
    /// By how much it is short or to spare, without a sign.
    pub margin: String,
    /// Significant digits of the first two.
    pub digits: u32,
}

/// An answer told.
#[derive(Debug, Clone, PartialEq)]
pub struct Told {
    /// Position of the rule in the ruleset.
    pub rule: usize,
    /// The subject; none where the rule found nothing it is about.
    pub about: Option<Subject>,
    /// Key of the subject.
    pub subject: String,
    /// The subject in the words of the trade.
    pub named: String,
    /// Id of the authority.
    pub authority: Option<&'static str>,
    /// The states it was judged in.
    pub case: Case,
    /// The outcome.
    pub outcome: Outcome,
    /// Whether the stage owes it.
    pub owed: bool,
    /// Its numbers, where there are any.
    pub numbers: Option<Numbers>,
    /// Weakest basis of the deciding branch.
    pub basis: Option<Basis>,
    /// Weakest standing of what is stated.
    pub standing: Option<Standing>,
    /// The working, what the design has first.
    pub working: Vec<String>,
    /// What is shown beside it and was not judged: its name, its number and how it comes about.
    pub beside: Vec<String>,
    /// The one step that gave what the design has, where it was worked.
    pub have_step: Option<String>,
    /// The one step that gave what is asked, where it was worked.
    pub limit_step: Option<String>,
    /// The limit what is asked was made of, or the first value that stands in no design.
    pub limit: Option<Root>,
    /// Whether what is asked was made of values of the design alone.
    pub own_limit: bool,
    /// What is only declared so far, below everything that was judged.
    pub promises: Vec<Promise>,
    /// The places its numbers came from.
    pub places: Vec<Place>,
    /// The place to look at first: the nearest decision behind what the design has, else the nearest stated value.
    pub governing: Option<Place>,
    /// The decisions behind a shortfall.
    pub levers: Vec<Lever>,
    /// What is missing; the reasons, when something that must stand does not.
    pub gaps: Vec<ToldGap>,
    /// Roots without a place.
    pub roots: Vec<Root>,
    /// Position of the variance in the design, and whether it has run out.
    pub variance: Option<(usize, bool)>,
}

/// Tells every answer of a review, with the whole working, every place and every root of each.
pub fn tell(review: &Review<'_>, tree: &Tree) -> Vec<Told> {
    review.answers.iter().map(|answer| one(review, tree, answer)).collect()
}

/// The numbers of one answer in a few words; empty where it has none.
pub fn answer_in_numbers(review: &Review<'_>, tree: &Tree, answer: &Answer) -> String {
    let told = one(review, tree, answer);
    match (&told.numbers, told.gaps.first()) {
        (Some(numbers), _) => format!("it has {}, asked is {}", numbers.printed.have, numbers.printed.asks),
        (None, Some(gap)) => format!("missing is {}", gap.what),
        (None, None) => String::new(),
    }
}

/// An answer with everything that is behind it.
fn one(review: &Review<'_>, tree: &Tree, answer: &Answer) -> Told {
    let book = &review.book;
    let mut told = explained(review, tree, answer);
    let deciding = answer.deciding.map(Deciding::lines).unwrap_or_default();
    let in_gaps = told.gaps.iter().flat_map(|g| g.places.iter().cloned());
    told.places = sorted(places_of(tree, book, &answer.lines).into_iter().chain(in_gaps).collect());
    told.working = working(book, &deciding, shown(&told), system(book, &deciding));
    told
}

/// An answer with what explains it: how its numbers came about, what they rest on, what to change.
pub(crate) fn explained(review: &Review<'_>, tree: &Tree, answer: &Answer) -> Told {
    let book = &review.book;
    let mut told = outlined(review, tree, answer);
    let deciding = answer.deciding.map(Deciding::lines).unwrap_or_default();
    let spoken = system(book, &deciding);
    let shown = shown(&told);
    let asked = answer.deciding.map(|d| asked(book, d)).unwrap_or_default();
    told.beside = answer.beside.iter().filter_map(|line| beside(book, *line, spoken)).collect();
    told.have_step = answer.deciding.and_then(|d| step(book, d.have, shown, spoken));
    told.limit_step = asked.first().and_then(|line| step(book, *line, shown, spoken));
    let asked_by = roots(book, &asked, spoken);
    told.own_limit = asked_by.is_empty() && !asked.is_empty();
    let limit = asked_by.iter().find(|root| root.kind == "limit");
    told.limit = limit.or_else(|| asked_by.first()).cloned();
    told.levers = if answer.outcome == Outcome::Short { levers(book, tree, &deciding) } else { Vec::new() };
    told.governing = governing(book, tree, answer);
    told.roots = roots(book, &answer.lines, spoken);
    told
}

/// The working shows its results as the numbers of the answer are printed.
fn shown(told: &Told) -> Shown {
    told.numbers.as_ref().map_or(Shown::USUAL, |n| Shown { digits: n.printed.digits, unit: Some(n.unit) })
}

/// An answer with its numbers, what is missing and what has to be proved.
pub(crate) fn outlined(review: &Review<'_>, tree: &Tree, answer: &Answer) -> Told {
    let book = &review.book;
    let card = &review.ruleset.rules[answer.rule].card;
    let deciding = answer.deciding.map(Deciding::lines).unwrap_or_default();
    let gap = |gap: &Gap| ToldGap::of(gap, tree, book);
    let mut told = counted(review, tree, answer);
    told.subject = answer.subject.map_or_else(|| card.about.name().to_owned(), |s| s.key(book.design()));
    told.named = named((book.design(), book.register()), card.about, answer.subject, &sizes(book, &deciding));
    told.authority = answer.authority.and_then(|at| book.register().authority(at)).map(|a| a.id);
    if let (Some(numbers), Some(deciding)) = (&mut told.numbers, answer.deciding) {
        numbers.printed = printed(numbers.unit, values(book, deciding), answer.margin.unwrap_or(f64::NAN));
    }
    told.basis = answer.deciding.map(|_| book.basis(&deciding));
    told.gaps = answer.gaps.iter().map(gap).collect();
    told
}

/// An answer as far as it is counted: its outcome, its numbers without a print of them, what has to be proved.
pub(crate) fn counted(review: &Review<'_>, tree: &Tree, answer: &Answer) -> Told {
    let book = &review.book;
    let deciding = answer.deciding.map(Deciding::lines).unwrap_or_default();
    let standing = book.standing(&deciding);
    Told {
        rule: answer.rule,
        about: answer.subject,
        subject: String::new(),
        named: String::new(),
        authority: None,
        case: answer.case,
        outcome: answer.outcome,
        owed: answer.owed,
        numbers: numbers(book, answer, system(book, &deciding)),
        basis: None,
        standing,
        working: Vec::new(),
        beside: Vec::new(),
        have_step: None,
        limit_step: None,
        limit: None,
        own_limit: false,
        promises: if standing == Some(Standing::Declared) {
            promises(book, tree, &deciding)
        } else {
            Vec::new()
        },
        levers: Vec::new(),
        governing: None,
        places: Vec::new(),
        roots: Vec::new(),
        gaps: Vec::new(),
        variance: answer.variance.map(|at| (at, answer.expired)),
    }
}

/// A line that is shown and not judged, under the name of what worked it.
fn beside(book: &Book<'_>, line: LineId, spoken: System) -> Option<String> {
    let name = match book.record(line).made {
        Made::Worked(formula) => formula.card().name,
        _ => return None,
    };
    step(book, line, Shown::USUAL, spoken).map(|step| format!("{name}: {step}"))
}

/// What a design is held against: of a band the end that it is nearer to.
fn asked(book: &Book<'_>, deciding: Deciding) -> Vec<LineId> {
    let value = |line: LineId| book.record(line).datum.number().unwrap_or(f64::NAN);
    match deciding.side {
        Side::AtLeast(limit) | Side::AtMost(limit) => vec![limit],
        Side::Within(low, high) => {
            let (under, over) = (value(deciding.have) - value(low), value(high) - value(deciding.have));
            if over < under { vec![high, low] } else { vec![low, high] }
        }
        Side::Holds => vec![deciding.have],
    }
}

/// Looked for level by level: what stands nearest to the number that was judged is what a designer would change.
fn governing(book: &Book<'_>, tree: &Tree, answer: &Answer) -> Option<Place> {
    let gap = answer.gaps.first();
    let mut level: Vec<LineId> = match (answer.deciding, gap) {
        (Some(deciding), _) => vec![deciding.have],
        (None, Some(gap)) if gap.origin.is_some_and(|o| !o.is_absent()) => {
            return gap.origin.map(|origin| place(tree, origin));
        }
        (None, Some(gap)) => gap.lines.clone(),
        (None, None) => answer.lines.clone(),
    };
    let (mut seen, mut fallback) = (Vec::new(), None);
    while !level.is_empty() {
        for line in &level {
            let Made::Stated { origin, card, .. } = book.record(*line).made else { continue };
            if card.is_some_and(|card| card.role == Role::Decision) {
                return Some(place(tree, origin));
            }
            fallback = fallback.or(Some(origin));
        }
        seen.extend(level.iter().copied());
        // In the order of the working, not in that in which the book came by its lines.
        let mut next: Vec<LineId> = Vec::new();
        for line in level.iter().flat_map(|line| book.arguments(*line)) {
            if !seen.contains(&line) && !next.contains(&line) {
                next.push(line);
            }
        }
        level = next;
    }
    fallback.map(|origin| place(tree, origin))
}

/// Numbers of an answer; their print is still empty.
fn numbers(book: &Book<'_>, answer: &Answer, spoken: System) -> Option<Numbers> {
    let deciding = answer.deciding?;
    let (low, high) = limits(deciding.side);
    let unit = unit_of(book, low.or(high)?, spoken);
    let margin = answer.margin.map(|m| difference(unit).difference_of_si(m));
    let (have, low, high) = values(book, deciding);
    Some(Numbers {
        unit,
        have: unit.of_si(have),
        low: low.map(|l| unit.of_si(l)),
        high: high.map(|h| unit.of_si(h)),
        margin,
        printed: Printed::default(),
    })
}

/// What is asked at least and at most; nothing where something holds or does not.
const fn limits(side: Side) -> (Option<LineId>, Option<LineId>) {
    match side {
        Side::AtLeast(limit) => (Some(limit), None),
        Side::AtMost(limit) => (None, Some(limit)),
        Side::Within(low, high) => (Some(low), Some(high)),
        Side::Holds => (None, None),
    }
}

/// What the design has and what is asked, SI.
fn values(book: &Book<'_>, deciding: Deciding) -> (f64, Option<f64>, Option<f64>) {
    let value = |line: LineId| book.record(line).datum.number().unwrap_or(f64::NAN);
    let (low, high) = limits(deciding.side);
    (value(deciding.have), low.map(value), high.map(value))
}

/// Three digits, more until what the design has and what is asked differ in print when they differ.
fn printed(unit: &'static Unit, (have, low, high): (f64, Option<f64>, Option<f64>), margin: f64) -> Printed {
    let equal = margin == 0.0;
    let text = |value: f64, digits: u32| print(value, unit, digits);
    let limits = || low.into_iter().chain(high);
    let digits =
        (DIGITS - 1..=12).find(|d| equal || limits().all(|l| text(l, *d) != text(have, *d))).unwrap_or(12);
    let asks = match (low, high) {
        (Some(low), Some(high)) => format!("{} to {}", text(low, digits), text(high, digits)),
        (Some(low), None) => format!("at least {}", text(low, digits)),
        (None, Some(high)) => format!("at most {}", text(high, digits)),
        (None, None) => String::new(),
    };
    let apart = difference(unit);
    let margin = if apart.dimension == Dimension::TEMPERATURE {
        format!("{:.1} {}", apart.difference_of_si(margin.abs()), apart.symbol)
    } else {
        print(margin.abs(), apart, 2)
    };
    Printed { have: text(have, digits), asks, margin, digits }
}

fn roots(book: &Book<'_>, lines: &[LineId], spoken: System) -> Vec<Root> {
    let one = |line: LineId| {
        let record = book.record(line).clone();
        let (kind, what, source, basis, annex) = match record.made {
            Made::Register(value, _) => {
                ("register", value.what, value.source, value.basis, book.register().annex_of(value))
            }
            Made::Default(_, card, default) => ("default", card.what, default.source, default.basis, None),
            Made::Limit(limit, value) => ("limit", limit.what, limit.source, limit.basis, value.by),
            Made::Stated { .. } | Made::Worked(_) => return None,
        };
        let value = print(record.datum.number()?, unit_of(book, line, spoken), DIGITS);
        Some(Root { kind, what, value, source, basis, annex })
    };
    let mut found: Vec<Root> = Vec::new();
    for root in Roots::met(book, lines).into_iter().filter_map(one) {
        if !found.contains(&root) {
            found.push(root);
        }
    }
    found
}
