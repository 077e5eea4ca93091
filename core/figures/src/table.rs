//! Rows of tables of limits: the row a value falls into, as a worked line of that value.

use haulout_calc::formula::{FormulaCard, Kind, Refusal};
use haulout_quantity::Basis;
use haulout_quantity::si::Length;
use haulout_sheet::{Assembly, Entry, Known, Limit, Line, LineId, Sheet};

static ROW: Assembly<Length> = Assembly {
    card: &FormulaCard {
        name: "row of a table by size",
        result: "row",
        text: "the first row whose upper end is not below the size",
        symbols: &[],
        kind: Kind::Pick,
        basis: Basis::Published,
        source: "size classes of the table",
        range: "sizes within the table",
    },
    run: |data| {
        let numbers: Vec<Length> = data.iter().map(Length::take).collect();
        let (size, rows) =
            numbers.split_first().ok_or_else(|| Refusal::new("a table needs a size to look up"))?;
        // A size typed in inches must fall into the class it falls into in centimetres.
        let fits = |row: &&[Length]| size.value <= row[0].value * (1.0 + 1e-9);
        let row = rows.chunks_exact(2).find(fits);
        row.map(|r| r[1]).ok_or_else(|| Refusal::new("the table has no row for animals of this size"))
    },
};

/// The value of the row a size falls into: each row is its upper end and its value, ends rising.
///
/// # Errors
/// A gap when the size is beyond the table.
pub fn row_by_size(
    sheet: Sheet<'_>,
    size: Line<Length>,
    rows: &[(&'static Limit, &'static Limit)],
) -> Known<Line<Length>> {
    let limits = rows.iter().flat_map(|(end, value)| [sheet.limit_any(end), sheet.limit_any(value)]);
    let lines: Vec<LineId> = std::iter::once(size.id()).chain(limits).collect();
    sheet.assemble(&ROW, &lines)
}
