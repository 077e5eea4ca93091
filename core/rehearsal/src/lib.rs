//! Room rehearsal.
