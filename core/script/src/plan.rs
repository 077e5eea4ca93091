//! The plan: what is left of a script once it has been run. It judges a subject by working the steps on the sheet.

use haulout_engine::{Check, Judge};
use haulout_model::{About, MissingKind, Subject};
use haulout_register::Trait;
use haulout_sheet::{All, Catalogued, Gap, GapKind, Gaps, Known, Limit, LineId, Sheet};

use crate::roots::Roots;
use crate::tape::{Part, Step, Tape};

/// The roots, the steps the answer needs, and the answer.
pub(crate) struct Plan {
    pub(crate) figures: Vec<&'static dyn Catalogued>,
    pub(crate) register: Vec<&'static Trait>,
    pub(crate) limits: Vec<&'static Limit>,
    pub(crate) each: Vec<&'static dyn Catalogued>,
    steps: Vec<Step>,
    used: Vec<bool>,
    parts: Vec<Part>,
    answer: usize,
}

/// The roots of one subject.
struct Found {
    figures: Vec<LineId>,
    register: Vec<LineId>,
    each: Vec<Vec<LineId>>,
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
            if used.steps[at] {
                tape.steps[at].0.rests_on().into_iter().for_each(|s| used.steps[s] = true);
            }
        }
        used
    }
}

impl Plan {
    /// The plan of a tape and its answer, over the roots the card lists.
    pub(crate) fn new(roots: Roots, tape: &Tape, answer: usize) -> Self {
        let Roots { figures, register, limits, each, .. } = roots;
        let steps = tape.steps.iter().map(|(step, _)| step.clone()).collect();
        let parts = tape.parts.iter().map(|made| made.part.clone()).collect();
        Plan { figures, register, limits, each, steps, used: Used::by(tape, answer).steps, parts, answer }
    }

    /// All roots that can be missing, or all that is missing of them.
    fn roots(&self, sheet: Sheet<'_>, at: Subject) -> Known<Found> {
        let figures: Vec<Known<LineId>> = self.figures.iter().map(|f| f.line(sheet, at)).collect();
        let register: Vec<Known<LineId>> = self.register.iter().map(|t| of_species(sheet, at, t)).collect();
        let each: Vec<Known<Vec<LineId>>> = self.each.iter().map(|f| of_each(sheet, at, *f)).collect();
        let (figures, register, each) = (figures.all(), register.all(), each.all()).all()?;
        Ok(Found { figures, register, each })
    }

    fn lines(&self, sheet: Sheet<'_>, found: &Found) -> Vec<Known<LineId>> {
        let mut lines: Vec<Known<LineId>> = Vec::with_capacity(self.steps.len());
        for (step, used) in self.steps.iter().zip(&self.used) {
            let line = match step {
                // Nothing rests on it, so nothing asks what stands here.
                _ if !used => Err(Gaps(Vec::new())),
                // A list is no line; what is made of it is.
                Step::Each(_) => Err(Gaps(Vec::new())),
                Step::Figure(position) => Ok(found.figures[*position]),
                Step::Register(position) => Ok(found.register[*position]),
                Step::Limit(position) => Ok(sheet.limit_any(self.limits[*position])),
                Step::Number(factor) => sheet.work_any(*factor, &[], GapKind::OutOfRange),
                Step::Worked(operation, a, b) => (lines[*a].clone(), lines[*b].clone())
                    .all()
                    .and_then(|(a, b)| sheet.work_any(*operation, &[a, b], GapKind::OutOfRange)),
                Step::Gathered(formula, list, before) => {
                    let before: Vec<_> = before.iter().flatten().map(|s| lines[*s].clone()).collect();
                    before.all().and_then(|before| {
                        let given = [before.as_slice(), self.listed(found, *list)].concat();
                        sheet.work_any(*formula, &given, GapKind::OutOfRange)
                    })
                }
                Step::Named(formula, arguments) => {
                    let arguments: Vec<_> = arguments.iter().map(|s| lines[*s].clone()).collect();
                    arguments.all().and_then(|given| sheet.work_any(*formula, &given, GapKind::OutOfRange))
                }
            };
            lines.push(line);
        }
        lines
    }

    /// The lines of the list that begins at a step.
    fn listed<'f>(&self, found: &'f Found, step: usize) -> &'f [LineId] {
        match self.steps[step] {
            Step::Each(position) => &found.each[position],
            _ => &[],
        }
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
        let found = self.roots(sheet, at)?;
        self.check(self.answer, &self.lines(sheet, &found))
    }
}

/// A figure about each subject that belongs to this one; a list that is not stated is a gap, one said to be empty is
/// empty.
fn of_each(sheet: Sheet<'_>, at: Subject, figure: &'static dyn Catalogued) -> Known<Vec<LineId>> {
    let walk = at.gather(figure.card().about, sheet.design());
    if walk.subjects.is_empty() {
        let open = walk.missing.iter().filter(|m| m.kind != MissingKind::None);
        let gaps: Vec<Gap> = open.map(|m| Gap::from(*m)).collect();
        return if gaps.is_empty() { Ok(Vec::new()) } else { Err(Gaps(gaps)) };
    }
    let lines: Vec<Known<LineId>> = walk.subjects.iter().map(|s| figure.line(sheet, *s)).collect();
    lines.all()
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
