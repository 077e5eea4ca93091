//! A program that does nothing: what starting a process costs.

fn main() {}
