//! Formulas of the trade that a script can ask for by their names.

use haulout_calc::{animal, containment, hydraulics, water};
use haulout_quantity::Dimension;
use haulout_sheet::AnyFormula;
use rhai::{Array, Engine, ImmutableString};

use crate::fault::nearest;
use crate::subject::Asked;
use crate::tape::open;
use crate::value::{Given, Value, value};

/// Every formula of the trade that takes numbers and gives a number.
pub static FORMULAS: &[&dyn AnyFormula] = &[
    &water::DENSITY,
    &water::DYNAMIC_VISCOSITY,
    &water::KINEMATIC_VISCOSITY,
    &water::VAPOUR_PRESSURE,
    &hydraulics::turnover::TURNOVER,
    &hydraulics::pipe::VELOCITY,
    &hydraulics::pipe::REYNOLDS,
    &hydraulics::pipe::FRICTION_FACTOR_LAMINAR,
    &hydraulics::pipe::FRICTION_FACTOR,
    &hydraulics::pipe::FRICTION_HEAD,
    &hydraulics::fittings::FITTINGS_HEAD,
    &hydraulics::device::DEVICE_HEAD,
    &hydraulics::pump::HYDRAULIC_POWER,
    &hydraulics::intake::APPROACH_VELOCITY,
    &hydraulics::intake::HOLDING_FORCE,
    &containment::REACH,
    &containment::ON_A_BACK,
    &containment::HEIGHT_SMOOTH_FROM,
    &containment::SHARE_OF,
    &containment::OVER,
    &animal::COVERED,
];

/// Lets a script ask for a formula.
pub(crate) fn register(engine: &mut Engine) {
    engine.register_fn("formula", |it: &mut Asked, name: ImmutableString, given: Array| {
        let given = given.into_iter().map(|v| value(v, "an argument of the formula"));
        it.formula(&name, &given.collect::<Given<Vec<Value>>>()?)
    });
}

impl Asked {
    fn formula(&self, name: &str, given: &[Value]) -> Given<Value> {
        let Some(formula) = FORMULAS.iter().find(|f| f.card().name == name) else {
            let near = nearest(name, FORMULAS.iter().map(|f| f.card().name));
            return Err(format!("there is no formula \"{name}\"{near}").into());
        };
        let takes = formula.takes();
        let fits = takes.len() == given.len() && takes.iter().zip(given).all(|(d, v)| *d == v.dimension());
        if !fits {
            let has: Vec<Dimension> = given.iter().map(Value::dimension).collect();
            let (takes, has) = (listed(&takes), listed(&has));
            let symbols = formula.card().symbols.join(", ");
            return Err(format!(
                "the formula \"{name}\" takes [{symbols}], which are {takes}; given are {has}"
            )
            .into());
        }
        let steps = given.iter().map(|v| v.step).collect();
        let step = open(&self.tape).formula(*formula, steps, formula.dimension(&takes))?;
        Ok(Value { tape: self.tape.clone(), step })
    }
}

fn listed(dimensions: &[Dimension]) -> String {
    if dimensions.is_empty() {
        return "none".to_owned();
    }
    dimensions.iter().map(|d| d.name().to_string()).collect::<Vec<_>>().join(", ")
}
