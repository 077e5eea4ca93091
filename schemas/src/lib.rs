//! schemas.
