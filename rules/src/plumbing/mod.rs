//! Chapter plumbing: what the pumps really move, and through what.

pub(crate) mod turnover_by_delivered_flow;
