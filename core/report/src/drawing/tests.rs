//! Tests of the sheet.
