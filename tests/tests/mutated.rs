//! Bytes of the seeds changed at random: reading and reviewing never panic. Slow, and run by hand.

use std::path::Path;

use haulout_document::{Limits, read};
use haulout_engine::review;
use haulout_quantity::Dimension;
use haulout_tests::{examples, options, repository, ruleset};

/// A generator of pseudo-random bits (xorshift64, Marsaglia 2003): the same on every machine.
struct Dice(u64);

impl Dice {
    fn below(&mut self, end: usize) -> usize {
        self.0 ^= self.0 << 13;
        self.0 ^= self.0 >> 7;
        self.0 ^= self.0 << 17;
        (self.0 % end.max(1) as u64) as usize
    }
}

/// Pieces that readers stumble over.
const PIECES: &[&[u8]] = &[
    b"\"",
    b"{",
    b"}",
    b"[",
    b"]",
    b",",
    b":",
    b"-",
    b"1e999",
    b"0",
    b"\\u",
    b"\xff",
    b"null",
    b"\"none\"",
    b" m",
    b"-1",
    b"1e-320",
    b"\xc2\xb0",
    b"\\ud800",
    b"\"to be decided\"",
];

/// One to eight changes: a byte turned, a piece put in, a stretch cut out or said twice.
fn mutated(seed: &[u8], dice: &mut Dice) -> Vec<u8> {
    let mut bytes = seed.to_vec();
    for _ in 0..=dice.below(8) {
        let at = dice.below(bytes.len());
        let end = (at + 1 + dice.below(24)).min(bytes.len());
        match dice.below(4) {
            0 if !bytes.is_empty() => bytes[at] ^= 1 << dice.below(8),
            1 => drop(bytes.splice(at..at, PIECES[dice.below(PIECES.len())].iter().copied())),
            2 => drop(bytes.drain(at..end)),
            _ => {
                let twice = bytes[at..end].to_vec();
                drop(bytes.splice(at..at, twice));
            }
        }
    }
    bytes
}

#[allow(clippy::disallowed_methods, reason = "the seeds live in the repository")]
fn seeds(folder: &Path) -> Vec<Vec<u8>> {
    let entries = std::fs::read_dir(folder).expect("the repository has a folder of seeds");
    let mut paths: Vec<_> = entries.filter_map(|entry| entry.ok().map(|e| e.path())).collect();
    paths.sort();
    paths.iter().filter_map(|path| std::fs::read(path).ok()).collect()
}

fn designs() -> Vec<Vec<u8>> {
    let marked = ruleset().rules.into_iter().flat_map(|rule| rule.examples);
    let marked = marked.map(|example| example.design.as_bytes().to_vec());
    let whole = examples().into_iter().map(|(_, text)| text.into_bytes());
    seeds(&repository().join("tests/fuzz/corpus/document")).into_iter().chain(whole).chain(marked).collect()
}

#[test]
#[ignore = "20 000 designs take minutes; run it by hand with --ignored"]
fn mutated_designs_are_read_and_reviewed_or_refused() {
    let (seeds, ruleset, mut dice) = (designs(), ruleset(), Dice(0x9E37_79B9_7F4A_7C15));
    let (mut trees, mut reviewed) = (0, 0);
    for _ in 0..20_000 {
        let bytes = mutated(&seeds[dice.below(seeds.len())], &mut dice);
        let Some(tree) = read(&bytes, &Limits::default()).tree else { continue };
        trees += 1;
        let (design, problems) = haulout_model::read(&tree);
        if problems.is_empty() {
            let review = review(&design, &ruleset, &[], &options());
            assert!(review.answers.len() >= ruleset.rules.len());
            reviewed += 1;
        }
    }
    assert!(trees > 100 && reviewed > 100, "{trees} trees, {reviewed} reviews: the changes are too coarse");
}

#[test]
#[ignore = "5 000 quantities take a while; run it by hand with --ignored"]
fn mutated_quantities_are_read_or_refused_at_a_place() {
    let (seeds, mut dice) =
        (seeds(&repository().join("tests/fuzz/corpus/quantity")), Dice(0x2545_F491_4F6C_DD1D));
    for _ in 0..5_000 {
        let bytes = mutated(&seeds[dice.below(seeds.len())], &mut dice);
        let text = String::from_utf8_lossy(&bytes);
        for dimension in [Dimension::LENGTH, Dimension::FLOW, Dimension::TEMPERATURE] {
            match haulout_quantity::read(&text, dimension) {
                Ok(stated) => assert!(stated.parts.value().is_finite(), "{text}"),
                Err(slip) => assert!(text.get(slip.at.clone()).is_some(), "{text}: {slip:?}"),
            }
        }
    }
}
