//! Figures and designs small enough to work by hand, and a card to hang script bodies on.

use haulout_document::{Limits, read};
use haulout_engine::{Options, Review, Rule, Ruleset, review};
use haulout_model::{About, Design};
use haulout_quantity::si::{Length, Ratio, ThermodynamicTemperature};
use haulout_script::{Catalogue, ScriptFault, compile};
use haulout_sheet::{Axis, Figure, FigureCard, Line};

const fn card(id: &'static str, about: About, axes: &'static [Axis], unit: &'static str) -> FigureCard {
    FigureCard { id, title: id, about, axes, unit, us_unit: unit, resolution: None }
}

static DEPTH: Figure<Line<Length>> = Figure {
    card: &card("depth", About::Pool, &[], "m"),
    work: |sheet, at| sheet.design().pools.items()[at.index()].depth.on(sheet),
};
static CLARITY: Figure<Line<Length>> = Figure {
    card: &card("clarity", About::Pool, &[], "m"),
    work: |sheet, at| sheet.design().pools.items()[at.index()].water.secchi.on(sheet),
};
static TEMPERATURE: Figure<Line<ThermodynamicTemperature>> = Figure {
    card: &card("water-temperature", About::Pool, &[], "°C"),
    work: |sheet, at| sheet.design().pools.items()[at.index()].water.temperature.on(sheet),
};
static MALES: Figure<Line<Ratio>> = Figure {
    card: &card("males", About::Group, &[], ""),
    work: |sheet, at| sheet.design().animals.items()[at.index()].sexes[0].on(sheet),
};

/// The figures of these tests.
pub(crate) static CATALOGUE: Catalogue = &[&DEPTH, &CLARITY, &TEMPERATURE, &MALES];

/// A design read from JSON.
pub(crate) fn design(json: &str) -> Design {
    let tree = read(json.as_bytes(), &Limits::default()).accepted().expect("the test's JSON is sound");
    let (design, problems) = haulout_model::read(&tree);
    assert!(problems.is_empty(), "{problems:?}");
    design
}

/// A review by one rule.
pub(crate) fn reviewed<'d>(design: &'d Design, ruleset: &'d Ruleset) -> Review<'d> {
    review(design, ruleset, &[], &Options { stage: None, on: "2026-11-25".into() })
}

/// A card about pool-groups with these lists, and the text of a script with a body behind it.
pub(crate) fn script(lists: &str, body: &str) -> String {
    with_card(&CARD.replace("LISTS", lists), body)
}

/// A card as given, and a body behind it.
pub(crate) fn with_card(card: &str, body: &str) -> String {
    format!("/*\n{card}\n*/\n{body}\n")
}

/// A sound card without lists.
pub(crate) const CARD: &str = r#"{ "id": "trial", "title": "A trial", "chapter": "water", "demand": "shall", "stage": "concept",
  "consequence": "harm", "about": "pool-group",
  "manual": { "asks": "a", "why": "b", "judged": "c", "cure": "d" },
  LISTS
  "examples": [
    { "shows": "enough", "design": {}, "subject": "pool:main", "expected": "met" },
    { "shows": "too little", "design": {}, "subject": "pool:main", "expected": "short" } ] }"#;

/// The lists most trials use: a depth, a shell length, a limit of 0.4 m.
pub(crate) const LISTS: &str = r#""figures": ["depth"], "register": ["body-length"],
  "limits": [{ "name": "spare", "what": "least depth", "value": "0.4 m", "tighter": "higher", "basis": "common practice",
               "source": "house standard" }],"#;

/// The rule of a script.
pub(crate) fn rule(text: &str) -> Rule {
    match compile("trial.rhai", text, CATALOGUE) {
        Ok(rule) => rule,
        Err(faults) => unreachable!("{faults:?}"),
    }
}

/// The faults of a script, each with the text it points at.
pub(crate) fn faults(text: &str) -> Vec<(String, String)> {
    let Err(faults) = compile("trial.rhai", text, CATALOGUE) else { return Vec::new() };
    faults.iter().map(|ScriptFault { message, span }| (message.clone(), span.of(text).to_owned())).collect()
}
