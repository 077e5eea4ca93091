//! The outputs as a whole: machine formats against their published schemas, workings worked again, pages as they stand.

mod common;
mod drawings;
mod formats;
mod pages;
mod places;
mod recomputed;
mod whole;
