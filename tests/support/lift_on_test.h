#pragma once

#include "core/progression/lift_machine.h"

#include <initializer_list>
#include <string>
#include <vector>

namespace chalk::test {

/// A barbell that can give every 2.5 kg from 20 to 190: pairs 25 25 15 10 5 2.5 1.25.
[[nodiscard]] progression::Kit barbellKit();
/// Dumbbells or the like of just these masses, in whole kg or lb.
[[nodiscard]] progression::Kit fixedKit(std::initializer_list<int> loads);
/// A lower-body lift in kg with the default policy.
[[nodiscard]] progression::LiftSetup lowerLift(progression::Kit kit = barbellKit());

[[nodiscard]] inline base::Load kilos(double value) { return base::Load::fromCenti(static_cast<std::int32_t>(value * 100 + (value < 0 ? -0.5 : 0.5))); }

/// One working set for a test: RIR -1 where it was not recorded.
struct Work {
    double load = 0;
    int reps = 0;
    int rir = progression::SetRecord::kNotRecorded;
    int rest = progression::SetRecord::kNotRecorded;
    progression::Steadiness steadiness = progression::Steadiness::Steady;
};

[[nodiscard]] progression::Exposure exposureOf(const std::vector<Work>& sets, int pain = 0);
/// A rehearsal that earns Pattern and Control.
[[nodiscard]] progression::Rehearsal goodRehearsal();

/// A lift that is put through events a few days apart; each call answers the names of the rules that fired, `B-5 L-6`.
class LiftOnTest {
public:
    explicit LiftOnTest(progression::LiftSetup setup = lowerLift());

    std::string apply(const progression::EventBody& body);
    /// Work with all sets alike.
    std::string work(int sets, double load, int reps, int rir = progression::SetRecord::kNotRecorded);
    std::string work(const std::vector<Work>& sets, int pain = 0) { return apply(exposureOf(sets, pain)); }
    std::string rehearse() { return apply(goodRehearsal()); }
    /// The coach sets the lift, as far as the fields are there.
    std::string set(progression::CoachSet set);
    std::string set(progression::Stage stage, double load);
    void pass(int days) { m_day = m_day + days; }

    /// What is due now; days may pass first.
    [[nodiscard]] progression::Prescription due(int days = 0) const { return m_machine.prescriptionOn(m_day + days); }
    [[nodiscard]] const progression::LiftState& state() const { return m_machine.state(); }
    [[nodiscard]] progression::LiftMachine& machine() { return m_machine; }
    [[nodiscard]] base::Date day() const { return m_day; }

private:
    progression::LiftMachine m_machine;
    base::Date m_day;
};

/// `B-5 L-6`.
[[nodiscard]] std::string namesOf(const progression::RuleList& rules);

}  // namespace chalk::test
