//! Room report.
