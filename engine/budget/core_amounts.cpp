#include "engine/budget/core_amounts.hpp"

#include <algorithm>

#include "engine/base/message_args.hpp"
#include "engine/base/scaled.hpp"

namespace twoclocks::budget {
namespace {

using base::Money;
using base::MoneyRound;
using base::Trouble;
using facts::CoreGrade;
using facts::CoreStage;
using facts::TaxCase;

void note(CoreWorked& out, Trouble code, std::vector<base::Arg> args, base::Severity severity) {
    base::Problem problem = base::trouble(code, std::move(args));
    problem.severity = severity;
    out.notes.push_back(std::move(problem));
}

/// Amounts of one core through tax and rate, one way each: toward less for the owner.
class Turning {
  public:
    Turning(const Setting& setting, CoreWorked& out) : setting_(setting), out_(out) {}

    [[nodiscard]] std::int64_t credit(Money amount) { return home(amount, MoneyRound::down); }

    [[nodiscard]] std::int64_t bill(Money amount) { return -home(amount, MoneyRound::up); }

    [[nodiscard]] bool sound() const { return sound_; }

  private:
    /// With the tax of the credit note where the owner bore it.
    [[nodiscard]] std::optional<Money> with_tax(Money amount, MoneyRound round) const {
        constexpr std::int64_t thousand = facts::whole_permille;
        if (out_.said.tax != TaxCase::borne) return amount;
        return base::scaled(amount, thousand + out_.said.tax_permille.value_or(0), thousand, round);
    }

    [[nodiscard]] std::int64_t home(Money amount, MoneyRound round) {
        const std::optional<Money> taxed = with_tax(amount, round);
        base::Problems faults;
        if (!taxed) faults.push_back(base::trouble(Trouble::sum_beyond, {core_name(out_.said)}));
        const auto out = taxed ? in_home(*taxed, setting_, round, faults) : std::nullopt;
        // One of its amounts is enough to tell.
        if (sound_) out_.notes.insert(out_.notes.end(), faults.begin(), faults.end());
        sound_ = sound_ && out.has_value();
        return out.value_or(0);
    }

    const Setting& setting_;
    CoreWorked& out_;
    bool sound_{true};
};

[[nodiscard]] const timeline::CoreStepState* last_graded(const timeline::CoreState& core) {
    const timeline::CoreStepState* out = nullptr;
    for (const timeline::CoreStepState& step : core.steps)
        if (step.said.grade || step.said.credit || step.said.billed) out = &step;
    return out;
}

/// What a grade is worth; missing: not known.
[[nodiscard]] std::optional<std::int64_t> worth_of(const facts::Core& said,
                                                   CoreGrade grade,
                                                   Turning& turning) {
    switch (grade) {
        case CoreGrade::full:
            return said.best_credit ? std::optional{turning.credit(*said.best_credit)}
                                    : std::nullopt;
        case CoreGrade::part:
            return said.part_credit ? std::optional{turning.credit(*said.part_credit)}
                                    : std::nullopt;
        case CoreGrade::nothing:
            return 0;
        case CoreGrade::billed:
            return said.bill ? std::optional{turning.bill(*said.bill)} : std::nullopt;
    }
    return std::nullopt;
}

void only(CoreWorked& out, CoreGrade grade, std::int64_t amount) {
    out.outcomes = {{grade, amount, facts::whole_permille}};
    out.credit = {amount, amount, amount};
}

/// What a record of a core says that it is worth.
enum class Recorded : std::uint8_t { nothing_said, said, unknown };

/// A grade or an amount that is recorded leaves nothing to chance.
[[nodiscard]] Recorded take_recorded(const timeline::CoreState& core,
                                     Turning& turning,
                                     CoreWorked& out) {
    const timeline::CoreStepState* step = last_graded(core);
    if (step == nullptr) return Recorded::nothing_said;
    const facts::CoreStep& said = step->said;
    const CoreGrade grade = said.grade.value_or(CoreGrade::nothing);
    if (said.billed)
        only(out, CoreGrade::billed, turning.bill(*said.billed));
    else if (said.credit)
        only(out, said.grade.value_or(CoreGrade::part), turning.credit(*said.credit));
    else if (const auto worth = worth_of(core.said, grade, turning))
        only(out, grade, *worth);
    else
        return Recorded::unknown;
    return Recorded::said;
}

/// The outcomes that have an amount, with their chances; what is left over is the best.
[[nodiscard]] bool take_chances(const facts::Core& said, Turning& turning, CoreWorked& out) {
    const std::int32_t part = said.part_permille.value_or(0);
    const std::int32_t nothing = said.nothing_permille.value_or(0);
    const std::int32_t billed = said.billed_permille.value_or(0);
    const std::int32_t best = facts::whole_permille - part - nothing - billed;
    const bool is_told = said.part_permille || said.nothing_permille || said.billed_permille;
    bool is_whole = is_told && best >= 0;
    for (const auto& [grade, chance] : {std::pair{CoreGrade::full, best},
                                        std::pair{CoreGrade::part, part},
                                        std::pair{CoreGrade::nothing, nothing},
                                        std::pair{CoreGrade::billed, billed}}) {
        const auto amount = worth_of(said, grade, turning);
        // A grade that cannot come out needs no amount.
        if (amount && (chance > 0 || !is_told))
            out.outcomes.push_back({grade, *amount, is_told ? chance : 0});
        is_whole = is_whole && (amount || chance <= 0);
    }
    return is_whole;
}

/// The sum of amounts by their chances, rounded down.
[[nodiscard]] std::int64_t expected_of(const std::vector<CoreOutcome>& outcomes) {
    std::int64_t whole = 0;
    std::int64_t rest = 0;
    for (const CoreOutcome& one : outcomes) {
        // Apart, so that no product is too long: an amount is below 10^15, a chance below 10^4.
        whole += one.amount / facts::whole_permille * one.permille;
        rest += one.amount % facts::whole_permille * one.permille;
    }
    const std::int64_t cut = rest / facts::whole_permille;
    return whole + cut - (rest % facts::whole_permille < 0 ? 1 : 0);
}

}  // namespace

void find_amounts(const timeline::CoreState& core, const Setting& setting, CoreWorked& out) {
    Turning turning{setting, out};
    out.known = true;
    if (core.said.destroy) return only(out, CoreGrade::nothing, 0);
    if (out.said.tax == TaxCase::unknown ||
        (out.said.tax != TaxCase::none && out.said.tax != TaxCase::reverse_charge &&
         !out.said.tax_permille))
        note(out, Trouble::tax_unknown, {core_name(out.said)}, base::Severity::caution);
    const Recorded recorded = take_recorded(core, turning, out);
    if (recorded == Recorded::nothing_said && out.standing == CoreStanding::forfeited)
        return only(out, CoreGrade::nothing, 0);
    if (recorded != Recorded::nothing_said) {
        out.known = turning.sound() && recorded == Recorded::said;
        if (recorded == Recorded::unknown)
            note(out, Trouble::core_worth_missing, {core_name(out.said)}, base::Severity::refused);
        return;
    }
    if (!core.said.best_credit && !core.said.part_credit && !core.said.bill) {
        out.known = false;
        note(out, Trouble::core_worth_missing, {core_name(out.said)}, base::Severity::refused);
        return;
    }
    const bool is_whole = take_chances(core.said, turning, out);
    for (const CoreOutcome& one : out.outcomes) {
        out.credit.low = std::min(out.credit.low, one.amount);
        out.credit.high = std::max(out.credit.high, one.amount);
    }
    out.known = turning.sound();
    if (!is_whole && out.known)
        note(out, Trouble::core_chances_missing, {core_name(out.said)}, base::Severity::caution);
    if (is_whole && !out.is_late) out.credit.likely = expected_of(out.outcomes);
    // After its deadline nobody has to take it.
    if (is_whole && !out.is_late) return;
    for (CoreOutcome& one : out.outcomes)
        one.permille = 0;
}

}  // namespace twoclocks::budget
