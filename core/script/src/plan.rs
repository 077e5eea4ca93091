//! The plan: what is left of a script once it has been run. It judges a subject by working the steps on the sheet.

use haulout_engine::{Check, Judge};
use haulout_model::{About, Subject};
use haulout_register::Trait;
use haulout_sheet::{All, Catalogued, Gap, GapKind, Gaps, Known, Limit, LineId, Sheet};

use crate::tape::{Part, Step, Tape};

/// The roots, the steps the answer needs, and the answer.
pub(crate) struct Plan {
    pub(crate) figures: Vec<&'static dyn Catalogued>,
    pub(crate) register: Vec<&'static Trait>,
    pub(crate) limits: Vec<&'static Limit>,
    steps: Vec<Step>,
    used: Vec<bool>,
    parts: Vec<Part>,
    answer: usize,
}

/// What of a tape an answer rests on.
pub(crate) struct Used {
    /// Steps, by position.
    pub(crate) steps: Vec<bool>,
    /// Parts, by position.
    pub(crate) parts: Vec<bool>,
}

impl Used {
    /// By the answer at a position.
    pub(crate) fn by(tape: &Tape, answer: usize) -> Self {
        let mut used = Used { steps: vec![false; tape.steps.len()], parts: vec![false; tape.parts.len()] };
        used.parts[answer] = true;
        // Everything rests on what was made before it, so one pass backwards finds all of it.
        for at in (0..=answer).rev() {
            if used.parts[at] {
                let part = &tape.parts[at].part;
                part.parts().into_iter().for_each(|p| used.parts[p] = true);
                part.steps().into_iter().for_each(|s| used.steps[s] = true);
            }
        }
        for at in (0..tape.steps.len()).rev() {
            if let (true, Step::Worked(_, a, b)) = (used.steps[at], tape.steps[at].0) {
                used.steps[a] = true;
                used.steps[b] = true;
            }
        }
        used
    }
}

impl Plan {
    /// The plan of a tape and its answer, over the roots the card lists.
    pub(crate) fn new(
        figures: Vec<&'static dyn Catalogued>,
        register: Vec<&'static Trait>,
        limits: Vec<&'static Limit>,
        tape: &Tape,
        answer: usize,
    ) -> Self {
        let steps = tape.steps.iter().map(|(step, _)| *step).collect();
        let parts = tape.parts.iter().map(|made| made.part.clone()).collect();
        Plan { figures, register, limits, steps, used: Used::by(tape, answer).steps, parts, answer }
    }

    /// All roots that can be missing, or all that is missing of them.
    fn roots(&self, sheet: Sheet<'_>, at: Subject) -> Known<(Vec<LineId>, Vec<LineId>)> {
        let figures: Vec<Known<LineId>> = self.figures.iter().map(|f| f.line(sheet, at)).collect();
        let register: Vec<Known<LineId>> = self.register.iter().map(|t| of_species(sheet, at, t)).collect();
        (figures.all(), register.all()).all()
    }

    fn lines(&self, sheet: Sheet<'_>, figures: &[LineId], register: &[LineId]) -> Vec<Known<LineId>> {
        let mut lines: Vec<Known<LineId>> = Vec::with_capacity(self.steps.len());
        for (step, used) in self.steps.iter().zip(&self.used) {
            let line = match *step {
                // Nothing rests on it, so nothing asks what stands here.
                _ if !used => Err(Gaps(Vec::new())),
                Step::Figure(position) => Ok(figures[position]),
                Step::Register(position) => Ok(register[position]),
                Step::Limit(position) => Ok(sheet.limit_any(self.limits[position])),
                Step::Number(factor) => sheet.work_any(factor, &[], GapKind::OutOfRange),
                Step::Worked(operation, a, b) => (lines[a].clone(), lines[b].clone())
                    .all()
                    .and_then(|(a, b)| sheet.work_any(operation, &[a, b], GapKind::OutOfRange)),
            };
            lines.push(line);
        }
        lines
    }

    fn check(&self, part: usize, lines: &[Known<LineId>]) -> Known<Check> {
        let line = |step: usize| lines[step].clone();
        let inner = |parts: &[usize]| parts.iter().map(|p| self.check(*p, lines)).collect();
        match &self.parts[part] {
            Part::AtLeast(have, limit) => {
                (line(*have), line(*limit)).all().map(|(h, l)| Check::AtLeast(h, l))
            }
            Part::AtMost(have, limit) => (line(*have), line(*limit)).all().map(|(h, l)| Check::AtMost(h, l)),
            Part::Within(have, low, high) => (line(*have), line(*low), line(*high))
                .all()
                .map(|(have, low, high)| Check::Within(have, low, high)),
            Part::AnyOf(parts) => Ok(Check::AnyOf(inner(parts))),
            Part::AllOf(parts) => Ok(Check::AllOf(inner(parts))),
            Part::OnlyIf(applies, then) => {
                Ok(Check::only_if(self.check(*applies, lines), self.check(*then, lines)))
            }
        }
    }
}

impl Judge for Plan {
    fn judge(&self, sheet: Sheet<'_>, at: Subject) -> Known<Check> {
        let (figures, register) = self.roots(sheet, at)?;
        self.check(self.answer, &self.lines(sheet, &figures, &register))
    }
}

/// A value of the species of the subject's group.
fn of_species(sheet: Sheet<'_>, at: Subject, wanted: &'static Trait) -> Known<LineId> {
    let group =
        at.part(About::Group).expect("a card that lists register values is about something with a group");
    let group = &sheet.design().animals.items()[group.index()];
    let name = group.species.on(sheet)?;
    let words = sheet.word_of(name);
    let unknown = |what: String| Err(Gap::of(GapKind::Unknown, what, vec![name.id()]).into());
    let Some(species) = sheet.species(&words) else { return unknown(sheet.unknown_species(&words)) };
    match (wanted.of)(species) {
        Some(value) => Ok(sheet.register_any(value, Some(name.id()))),
        None => unknown(format!("{} of {}", wanted.name, species.latin)),
    }
}
