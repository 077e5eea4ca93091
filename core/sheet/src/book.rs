//! The book keeps the lines of one review; a sheet is the book seen in one case.

use std::any::Any;
use std::cell::{Ref, RefCell};
use std::sync::Arc;

use haulout_calc::formula::{Formula, Refusal};
use haulout_model::{Design, Origin};
use haulout_quantity::{Dimension, Measure, Unit};
use rustc_hash::{FxBuildHasher, FxHashMap};

use crate::case::Case;
use crate::formula::{AnyFormula, Lines};
use crate::gap::{Gap, GapKind, Known};
use crate::limit::{Limit, Limits};
use crate::line::{Datum, Entry, Line, LineId, Made, Record};
use crate::substitution::Substitution;
use crate::walk::Marks;
use crate::worked::{Worked, same};
use haulout_register::{Authority, Register, Species, Value};

#[derive(Clone)]
pub(crate) enum Memo {
    UnderWork,
    Done(Known<Arc<dyn Any + Send + Sync>>),
}

/// Figure, and subject and what is left of the case for its axes, each packed into one number.
pub(crate) type MemoKey = (usize, u64, u32);

/// Formulas of up to so many lines are worked without asking for memory.
const FEW: usize = 8;

/// Lines that room is made for at once, for a few figures and for each rule of a review; a book grows beyond.
const FEW_LINES: usize = 128;
const LINES_OF_A_RULE: usize = 16;

/// The lines of one review of one design under one ruleset, with its substitutions.
pub struct Book<'d> {
    design: &'d Design,
    limits: &'d Limits,
    pub(crate) substitutions: &'d [Substitution],
    records: RefCell<Vec<Record>>,
    arguments: RefCell<Vec<LineId>>,
    roots: RefCell<FxHashMap<Origin, LineId>>,
    limit_lines: RefCell<FxHashMap<usize, LineId>>,
    register_lines: RefCell<FxHashMap<(usize, Option<LineId>), LineId>>,
    worked: RefCell<Worked>,
    pub(crate) memo: RefCell<FxHashMap<MemoKey, Memo>>,
    pub(crate) marks: RefCell<Marks>,
}

impl<'d> Book<'d> {
    /// An empty book, for a few figures.
    pub fn new(design: &'d Design, limits: &'d Limits, substitutions: &'d [Substitution]) -> Self {
        Book::with_room(design, limits, substitutions, FEW_LINES)
    }

    /// An empty book with room for what so many rules ask for.
    pub fn for_rules(
        design: &'d Design,
        limits: &'d Limits,
        substitutions: &'d [Substitution],
        rules: usize,
    ) -> Self {
        Book::with_room(design, limits, substitutions, rules * LINES_OF_A_RULE)
    }

    fn with_room(
        design: &'d Design,
        limits: &'d Limits,
        substitutions: &'d [Substitution],
        lines: usize,
    ) -> Self {
        Book {
            design,
            limits,
            substitutions,
            records: RefCell::new(Vec::with_capacity(lines)),
            arguments: RefCell::new(Vec::with_capacity(2 * lines)),
            roots: RefCell::new(FxHashMap::with_capacity_and_hasher(lines / 2, FxBuildHasher)),
            limit_lines: RefCell::default(),
            register_lines: RefCell::default(),
            worked: RefCell::new(Worked::with_room(lines / 2)),
            memo: RefCell::new(FxHashMap::with_capacity_and_hasher(lines / 2, FxBuildHasher)),
            marks: RefCell::default(),
        }
    }

    /// The book in a case.
    pub const fn sheet(&self, case: Case) -> Sheet<'_> {
        Sheet { book: self, case }
    }

    /// The design.
    pub const fn design(&self) -> &'d Design {
        self.design
    }

    /// The species and authorities of the run: the built-in ones and those of its annexes.
    pub const fn register(&self) -> &'d Register {
        self.limits.register()
    }

    /// A line. For the engine and the reports only: a rule or a figure that looks at numbers decides outside the sheet.
    pub fn record(&self, id: LineId) -> Ref<'_, Record> {
        Ref::map(self.records.borrow(), |records| &records[id as usize])
    }

    /// The lines a line was worked from.
    pub fn arguments(&self, id: LineId) -> Vec<LineId> {
        let (start, end) = self.record(id).args;
        self.arguments.borrow()[start as usize..end as usize].to_vec()
    }

    pub(crate) fn extend_with_arguments(&self, id: LineId, open: &mut Vec<LineId>) {
        let (start, end) = self.record(id).args;
        open.extend_from_slice(&self.arguments.borrow()[start as usize..end as usize]);
    }

    /// The two lines whose equality shows that a search found what it looked for.
    pub fn check_of(&self, id: LineId) -> Option<(LineId, LineId)> {
        self.record(id).check
    }

    /// How many lines there are.
    pub fn len(&self) -> usize {
        self.records.borrow().len()
    }

    /// Whether nothing has been read or worked yet.
    pub fn is_empty(&self) -> bool {
        self.len() == 0
    }

    fn push(
        &self,
        datum: Datum,
        dimension: Dimension,
        unit: Option<&'static Unit>,
        made: Made,
        from: &[LineId],
    ) -> LineId {
        let mut arguments = self.arguments.borrow_mut();
        let start = arguments.len() as u32;
        arguments.extend_from_slice(from);
        let args = (start, arguments.len() as u32);
        let mut records = self.records.borrow_mut();
        records.push(Record { datum, dimension, unit, made, args, check: None });
        (records.len() - 1) as LineId
    }

    /// What comes of the data of some lines; few of them are kept on the stack.
    fn worked_on<T>(&self, lines: &[LineId], work: impl FnOnce(&[Datum]) -> T) -> T {
        let datum = |records: &[Record], id: LineId| records[id as usize].datum.clone();
        if lines.len() <= FEW {
            let mut data = [const { Datum::Number(0.0) }; FEW];
            let records = self.records.borrow();
            data.iter_mut().zip(lines).for_each(|(data, id)| *data = datum(&records, *id));
            drop(records);
            return work(&data[..lines.len()]);
        }
        let records = self.records.borrow();
        let data: Vec<Datum> = lines.iter().map(|id| datum(&records, *id)).collect();
        drop(records);
        work(&data)
    }

    fn dimension_of(&self, formula: &dyn AnyFormula, lines: &[LineId]) -> Dimension {
        let records = self.records.borrow();
        let mut dimensions = [Dimension::NUMBER; FEW];
        if lines.len() > FEW {
            let all: Vec<Dimension> = lines.iter().map(|id| records[*id as usize].dimension).collect();
            return formula.dimension(&all);
        }
        dimensions.iter_mut().zip(lines).for_each(|(own, id)| *own = records[*id as usize].dimension);
        formula.dimension(&dimensions[..lines.len()])
    }

    /// The line, or the gap, that the same formula made of the same lines before: a formula is a function of its lines
    /// alone, so an outline that ten figures ask for is drawn once.
    fn worked_before(
        &self,
        key: u64,
        formula: &'static dyn AnyFormula,
        lines: &[LineId],
        kind: GapKind,
    ) -> Option<Known<LineId>> {
        let worked = self.worked.borrow();
        if let Some(id) = worked.lines.get(&key) {
            let records = self.records.borrow();
            let Record { made, args: (start, end), .. } = &records[*id as usize];
            let alike = matches!(made, Made::Worked(own) if same(*own, formula))
                && self.arguments.borrow()[*start as usize..*end as usize] == *lines;
            return alike.then_some(Ok(*id));
        }
        worked.refused(key, formula, lines, kind)
    }

    pub(crate) fn root(
        &self,
        origin: Origin,
        make: impl FnOnce() -> (Datum, Dimension, Option<&'static Unit>, Made),
    ) -> LineId {
        if let Some(id) = self.roots.borrow().get(&origin) {
            return *id;
        }
        let (datum, dimension, unit, made) = make();
        let id = self.push(datum, dimension, unit, made, &[]);
        self.roots.borrow_mut().insert(origin, id);
        id
    }

    pub(crate) fn substituted(&self, origin: Origin) -> Option<f64> {
        let hit = |s: &&Substitution| s.node == origin.node && s.part == origin.part && !origin.is_absent();
        self.substitutions.iter().find(hit).map(|s| s.value)
    }
}

/// The book seen in one case. Copied freely.
#[derive(Clone, Copy)]
pub struct Sheet<'s> {
    pub(crate) book: &'s Book<'s>,
    pub(crate) case: Case,
}

impl<'s> Sheet<'s> {
    /// The design that is worked on.
    pub const fn design(self) -> &'s Design {
        self.book.design
    }

    /// The case in question.
    pub const fn case(self) -> Case {
        self.case
    }

    /// The same sheet in another case.
    pub const fn in_case(self, case: Case) -> Sheet<'s> {
        Sheet { book: self.book, case }
    }

    /// Works a line by a formula from exactly the lines the formula lists.
    ///
    /// # Errors
    /// A gap when the formula refuses: the lines lie outside its range.
    pub fn work<A, R: Entry>(self, formula: &'static Formula<A, R>, lines: impl Lines<A>) -> Known<Line<R>>
    where
        Formula<A, R>: AnyFormula,
    {
        self.work_any(formula, lines.ids().as_ref(), GapKind::OutOfRange).map(Line::new)
    }

    /// As [`Sheet::work`], for a construction: a refusal means that the drawing cannot be worked with.
    ///
    /// # Errors
    /// A gap when the construction fails.
    pub fn construct<A, R: Entry>(
        self,
        formula: &'static Formula<A, R>,
        lines: impl Lines<A>,
    ) -> Known<Line<R>>
    where
        Formula<A, R>: AnyFormula,
    {
        self.work_any(formula, lines.ids().as_ref(), GapKind::Unsound).map(Line::new)
    }

    /// Works a line from any number of lines of one type.
    ///
    /// # Errors
    /// A gap when the formula refuses.
    pub fn fold<A: Entry, R: Entry>(
        self,
        formula: &'static crate::Many<A, R>,
        lines: &[Line<A>],
    ) -> Known<Line<R>> {
        let ids: Vec<LineId> = lines.iter().map(|l| l.id()).collect();
        self.work_any(formula, &ids, GapKind::OutOfRange).map(Line::new)
    }

    /// Puts something together from lines of several types.
    ///
    /// # Errors
    /// A gap when it cannot be put together.
    pub fn assemble<R: Entry>(
        self,
        formula: &'static crate::Assembly<R>,
        lines: &[LineId],
    ) -> Known<Line<R>> {
        self.work_any(formula, lines, GapKind::Unsound).map(Line::new)
    }

    /// Works a line by a formula whose types are not known here; scripts use it.
    ///
    /// # Errors
    /// A gap of `kind` when the formula refuses.
    pub fn work_any(
        self,
        formula: &'static dyn AnyFormula,
        lines: &[LineId],
        kind: GapKind,
    ) -> Known<LineId> {
        let key = Worked::key(formula, lines);
        if let Some(known) = self.book.worked_before(key, formula, lines, kind) {
            return known;
        }
        let known = self.work_anew(formula, lines, kind);
        self.book.worked.borrow_mut().keep(key, formula, lines, kind, &known);
        known
    }

    fn work_anew(self, formula: &'static dyn AnyFormula, lines: &[LineId], kind: GapKind) -> Known<LineId> {
        match self.book.worked_on(lines, |data| formula.again(data)) {
            Ok(Datum::Number(n)) if !n.is_finite() => {
                let what = format!("{}: the numbers given lead to no number", formula.card().name);
                Err(Gap::of(kind, what, lines.to_vec()).into())
            }
            Ok(datum) => {
                let dimension = self.book.dimension_of(formula, lines);
                Ok(self.book.push(datum, dimension, None, Made::Worked(formula), lines))
            }
            Err(Refusal { why }) => Err(Gap::of(kind, why, lines.to_vec()).into()),
        }
    }

    /// Notes two lines that must be equal if the search behind `found` found the right thing; they are its working.
    pub fn check<T, U>(self, found: Line<T>, left: Line<U>, right: Line<U>) {
        self.book.records.borrow_mut()[found.id() as usize].check = Some((left.id(), right.id()));
    }

    /// A limit, as the ruleset has it.
    pub fn limit<Q: Measure>(self, limit: &'static Limit) -> Line<Q> {
        debug_assert!(limit.dimension == Q::DIMENSION, "{}: card and type differ in dimension", limit.name);
        Line::new(self.limit_any(limit))
    }

    /// A limit whose dimension is not known here.
    pub fn limit_any(self, limit: &'static Limit) -> LineId {
        let key = std::ptr::from_ref(limit) as usize;
        if let Some(id) = self.book.limit_lines.borrow().get(&key) {
            return *id;
        }
        let value = self.book.limits.value(limit);
        let unit = haulout_quantity::unit(limit.unit);
        let id =
            self.book.push(Datum::Number(value.value), limit.dimension, unit, Made::Limit(limit, value), &[]);
        self.book.limit_lines.borrow_mut().insert(key, id);
        id
    }

    /// A value of a register, looked up by a line.
    pub fn register<Q: Measure>(self, value: &'static Value, by: Option<LineId>) -> Line<Q> {
        debug_assert!(value.dimension == Q::DIMENSION, "{}: value and type differ in dimension", value.what);
        Line::new(self.register_any(value, by))
    }

    /// A value of a register whose dimension is not known here.
    pub fn register_any(self, value: &'static Value, by: Option<LineId>) -> LineId {
        let key = (std::ptr::from_ref(value) as usize, by);
        if let Some(id) = self.book.register_lines.borrow().get(&key) {
            return *id;
        }
        let unit = haulout_quantity::unit(value.unit);
        let number = Datum::Number(self.book.limits.registered(value));
        let id = self.book.push(number, value.dimension, unit, Made::Register(value, by), by.as_slice());
        self.book.register_lines.borrow_mut().insert(key, id);
        id
    }

    /// The species a word names, in the register of the run.
    pub fn species(self, words: &str) -> Option<&'static Species> {
        self.book.register().find(words)
    }

    /// What to say of a species the register does not know.
    pub fn unknown_species(self, words: &str) -> String {
        let nearest = self.book.register().nearest(words);
        format!("the register does not know \"{words}\"; the nearest it has is {nearest}")
    }

    /// The authority of the case.
    pub fn authority(self) -> Option<&'static Authority> {
        self.case.authority.and_then(|at| self.book.register().authority(at))
    }

    /// Whether a choice stands at one of its options; only for choosing which stated fields to read next, and the
    /// line must then be among the arguments or the gaps of what follows.
    pub fn option_of(self, choice: Line<haulout_model::Word>) -> u16 {
        self.book.record(choice.id()).datum.number().map_or(u16::MAX, |n| n as u16)
    }

    /// The word of a line that holds one, for a look-up in a register.
    pub fn word_of(self, words: Line<Arc<String>>) -> Arc<String> {
        Arc::<String>::take(&self.book.record(words.id()).datum)
    }
}
