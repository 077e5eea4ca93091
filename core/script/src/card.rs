//! The card of a script: the JSON of its head, read strictly and turned into the card of a rule.

use haulout_engine::{Card, Consequence, Demand, Example, Expected, Manual, Words};
use haulout_model::{About, Stage};
use haulout_register::Matter;
use haulout_sheet::{Case, Filter, LevelState, Pumps, Size};
use serde::Deserialize;
use serde_json::{Map, Value};

use crate::fault::{ScriptFault, nearest};
use crate::head::Head;
use crate::limit::LimitEntry;
use crate::slip::slip;

/// The card as written.
#[derive(Debug, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub(crate) struct ScriptCard {
    pub(crate) id: String,
    title: String,
    chapter: String,
    demand: DemandWord,
    stage: String,
    matter: Option<String>,
    consequence: String,
    #[serde(default)]
    case: CaseEntry,
    pub(crate) about: String,
    caution: Option<String>,
    manual: ManualEntry,
    #[serde(default)]
    pub(crate) figures: Vec<String>,
    #[serde(default)]
    pub(crate) register: Vec<String>,
    #[serde(default)]
    pub(crate) limits: Vec<LimitEntry>,
    #[serde(default)]
    pub(crate) each: Vec<String>,
    pub(crate) examples: Vec<ExampleEntry>,
}

#[derive(Debug, Clone, Copy, Deserialize)]
#[serde(rename_all = "kebab-case")]
enum DemandWord {
    Shall,
    Should,
}

#[derive(Debug, Default, Deserialize)]
#[serde(default, deny_unknown_fields)]
struct CaseEntry {
    filter: FilterWord,
    pumps: PumpsWord,
    level: LevelWord,
    size: SizeWord,
}

#[derive(Debug, Clone, Copy, Default, Deserialize)]
#[serde(rename_all = "kebab-case")]
enum FilterWord {
    #[default]
    Clean,
    Dirty,
}

#[derive(Debug, Clone, Copy, Default, Deserialize)]
#[serde(rename_all = "kebab-case")]
enum PumpsWord {
    #[default]
    On,
    Off,
}

#[derive(Debug, Clone, Copy, Default, Deserialize)]
#[serde(rename_all = "kebab-case")]
enum LevelWord {
    #[default]
    Water,
    Low,
    High,
}

#[derive(Debug, Clone, Copy, Default, Deserialize)]
#[serde(rename_all = "kebab-case")]
enum SizeWord {
    #[default]
    Grown,
    Smallest,
    Now,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
struct ManualEntry {
    asks: String,
    why: String,
    judged: String,
    cure: String,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct ExampleEntry {
    shows: String,
    design: Map<String, Value>,
    subject: String,
    expected: ExpectedWord,
    #[serde(default)]
    place: String,
}

#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize)]
#[serde(rename_all = "kebab-case")]
enum ExpectedWord {
    Met,
    Short,
    NotAssessed,
    DoesNotApply,
}

impl CaseEntry {
    fn case(&self) -> Case {
        Case {
            filter: match self.filter {
                FilterWord::Clean => Filter::Clean,
                FilterWord::Dirty => Filter::Dirty,
            },
            pumps: match self.pumps {
                PumpsWord::On => Pumps::On,
                PumpsWord::Off => Pumps::Off,
            },
            level: match self.level {
                LevelWord::Water => LevelState::Water,
                LevelWord::Low => LevelState::Low,
                LevelWord::High => LevelState::High,
            },
            size: match self.size {
                SizeWord::Grown => Size::Grown,
                SizeWord::Smallest => Size::Smallest,
                SizeWord::Now => Size::Now,
            },
            authority: None,
        }
    }
}

impl ExampleEntry {
    pub(crate) fn example(&self) -> Example {
        Example {
            shows: words(&self.shows),
            design: Words::Owned(Value::Object(self.design.clone()).to_string()),
            subject: words(&self.subject),
            expected: match self.expected {
                ExpectedWord::Met => Expected::Met,
                ExpectedWord::Short => Expected::Short,
                ExpectedWord::NotAssessed => Expected::NotAssessed,
                ExpectedWord::DoesNotApply => Expected::DoesNotApply,
            },
            place: words(&self.place),
        }
    }
}

fn words(text: &str) -> Words {
    Words::Owned(text.to_owned())
}

/// Reads the card out of a head.
pub(crate) fn read(head: &Head<'_>) -> Result<ScriptCard, ScriptFault> {
    serde_json::from_str(head.json).map_err(|error| slip(head, &error))
}

impl ScriptCard {
    /// The card of the rule, and what it is about.
    pub(crate) fn rule_card(
        &self,
        head: &Head<'_>,
        file_name: &str,
        faults: &mut Vec<ScriptFault>,
    ) -> Option<Card> {
        let known = faults.len();
        let mut fault =
            |words: &[&str], message: String| faults.push(ScriptFault::new(head.place(words), message));
        self.identity(file_name, &mut fault);
        let about = About::of(&self.about);
        if about.is_none() {
            let near = nearest(&self.about, About::all().map(About::name));
            fault(&["about", &self.about], format!("a rule is not about \"{}\"{near}", self.about));
        }
        let stage = Stage::of(&self.stage);
        if stage.is_none() {
            let near = nearest(&self.stage, Stage::WORDS.iter().copied());
            fault(&["stage", &self.stage], format!("\"{}\" is no stage{near}", self.stage));
        }
        let consequence = Consequence::ALL.iter().copied().find(|c| c.name() == self.consequence);
        if consequence.is_none() {
            let near = nearest(&self.consequence, Consequence::ALL.iter().map(|c| c.name()));
            fault(
                &["consequence", &self.consequence],
                format!("\"{}\" is no consequence{near}", self.consequence),
            );
        }
        let matter = self.matter(&mut fault);
        if !self.shows_both_sides() {
            let message =
                "the examples show at least one design that meets the rule and one that falls short";
            fault(&["examples"], message.to_owned());
        }
        (faults.len() == known).then_some(())?;
        Some(self.put_together(about?, stage?, consequence?, matter))
    }

    fn identity(&self, file_name: &str, fault: &mut impl FnMut(&[&str], String)) {
        let stem = file_name.rsplit(['/', '\\']).next().unwrap_or(file_name).trim_end_matches(".rhai");
        let plain = self.id.starts_with(|c: char| c.is_ascii_lowercase())
            && self.id.chars().all(|c| c.is_ascii_lowercase() || c.is_ascii_digit() || c == '-');
        if !plain {
            let message = format!(
                "the id \"{}\" is not made of a-z, 0-9 and hyphens, beginning with a letter",
                self.id
            );
            fault(&["id", &self.id], message);
        } else if self.id != stem {
            let message =
                format!("the rule is called \"{}\" and its file \"{stem}\": give both one name", self.id);
            fault(&["id", &self.id], message);
        }
    }

    fn matter(&self, fault: &mut impl FnMut(&[&str], String)) -> Option<Matter> {
        let word = self.matter.as_deref()?;
        let all = [Matter::Welfare, Matter::Electrical, Matter::Guards];
        let matter = all.into_iter().find(|m| m.name() == word);
        if matter.is_none() {
            fault(
                &["matter", word],
                format!("\"{word}\" is no matter{}", nearest(word, all.iter().map(|m| m.name()))),
            );
        }
        matter
    }

    fn shows_both_sides(&self) -> bool {
        [ExpectedWord::Met, ExpectedWord::Short]
            .iter()
            .all(|side| self.examples.iter().any(|e| e.expected == *side))
    }

    fn put_together(
        &self,
        about: About,
        stage: Stage,
        consequence: Consequence,
        matter: Option<Matter>,
    ) -> Card {
        Card {
            id: words(&self.id),
            title: words(&self.title),
            chapter: words(&self.chapter),
            demand: match self.demand {
                DemandWord::Shall => Demand::Shall,
                DemandWord::Should => Demand::Should,
            },
            stage,
            matter,
            consequence,
            case: self.case.case(),
            about,
            caution: self.caution.as_deref().map(words),
            manual: Manual {
                asks: words(&self.manual.asks),
                why: words(&self.manual.why),
                judged: words(&self.manual.judged),
                cure: words(&self.manual.cure),
            },
        }
    }
}
