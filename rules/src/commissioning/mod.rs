//! Commissioning: trials before the first animal comes, each with the numbers the design lets expect.
//!
//! What is done is the practice of the trade, with no single source; the numbers are those of the figures.

mod alarm_call_out;
mod alarm_in_time;
mod bag_against_water;
mod barrier_walk;
mod blocked_outlet;
mod cooling_by_the_clock;
mod dry_pump;
mod eyes_on_the_pool;
mod fill_left_open;
mod float_under_load;
mod flow_by_volume;
mod heater_by_the_clock;
mod power_cut;
mod readings_before_a_step;
mod residual_current_and_bond;
mod stand_for_leaks;
mod surface_and_uv_map;

use haulout_engine::Trial;

/// Every trial, in the order in which they are made: water, power, warmth, barriers, sight, animals.
pub static TRIALS: &[&Trial] = &[
    &stand_for_leaks::TRIAL,
    &flow_by_volume::TRIAL,
    &power_cut::TRIAL,
    &blocked_outlet::TRIAL,
    &fill_left_open::TRIAL,
    &dry_pump::TRIAL,
    &residual_current_and_bond::TRIAL,
    &heater_by_the_clock::TRIAL,
    &cooling_by_the_clock::TRIAL,
    &alarm_call_out::TRIAL,
    &alarm_in_time::TRIAL,
    &surface_and_uv_map::TRIAL,
    &float_under_load::TRIAL,
    &barrier_walk::TRIAL,
    &eyes_on_the_pool::TRIAL,
    &readings_before_a_step::TRIAL,
    &bag_against_water::TRIAL,
];

#[cfg(test)]
mod tests {
    use super::TRIALS;

    #[test]
    fn a_trial_expects_only_what_its_subject_has() {
        for trial in TRIALS {
            for expects in trial.expects {
                let figure = expects.figure.card();
                assert!(trial.about.holds(figure.about), "{}: {}", trial.id, figure.id);
            }
        }
        let mut ids: Vec<&str> = TRIALS.iter().map(|trial| trial.id).collect();
        ids.sort_unstable();
        assert!(ids.windows(2).all(|two| two[0] != two[1]), "{ids:?}");
    }
}
