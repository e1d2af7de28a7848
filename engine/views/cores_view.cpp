#include "engine/views/cores_view.hpp"

#include <algorithm>
#include <array>

#include "engine/base/message_args.hpp"
#include "engine/budget/from_records.hpp"
#include "engine/views/money_estimate.hpp"
#include "engine/views/record_cash.hpp"
#include "engine/views/why_parts.hpp"

namespace twoclocks::views {
namespace {

using base::Message;
using base::Money;
using base::Word;
using budget::CoreStanding;
using budget::CoreWorked;

/// The groups of the page, the most pressing first.
enum class Group : std::uint8_t { pressing, on_aircraft, away, done };

[[nodiscard]] Group group_of(const CoreWorked& core) {
    if (!is_open(core.standing)) return Group::done;
    if (core.standing == CoreStanding::to_send) return Group::pressing;
    if (core.standing == CoreStanding::fitted)
        return core.is_late || (core.is_at_risk && core.is_deadline_known) ? Group::pressing
                                                                           : Group::on_aircraft;
    return Group::away;
}

[[nodiscard]] Word standing_word(const CoreWorked& core) {
    constexpr std::array words{Word::core_is_fitted,
                               Word::core_is_off,
                               Word::core_is_sent,
                               Word::core_is_received,
                               Word::core_is_graded,
                               Word::core_is_settled,
                               Word::core_is_forfeited,
                               Word::core_is_destroyed};
    if (core.said.destroy && core.standing == CoreStanding::to_send)
        return Word::core_is_to_destroy;
    return words[static_cast<std::size_t>(core.standing)];
}

/// Words of a core while they are put together.
class CoreWords {
  public:
    CoreWords(const CoreWorked& core, base::Currency home, base::Date today)
        : core_(core), home_(home), today_(today) {}

    [[nodiscard]] SumsRow row() {
        row_.key = core_.said.core;
        row_.name = {Word::record_of, {core_label(core_.said)}};
        row_.figure = figure();
        line(standing_word(core_), {});
        days();
        what_goes();
        row_.notes = core_.notes;
        return std::move(row_);
    }

  private:
    void line(Word word, std::vector<base::Arg> args) {
        row_.lines.push_back({word, std::move(args)});
    }

    [[nodiscard]] base::Arg money(std::int64_t minor_units) const {
        return base::money_arg({minor_units, home_});
    }

    [[nodiscard]] Message figure() const {
        if (core_.said.destroy) return {Word::blank, {}};
        if (!core_.known) return {Word::core_credit, {base::word_arg(Word::not_known)}};
        return {Word::core_credit, {money(core_.credit.likely)}};
    }

    void days() {
        if (core_.deadline && group_of(core_) != Group::done && group_of(core_) != Group::away) {
            const std::int32_t left = base::days_between(today_, *core_.deadline);
            if (!core_.is_deadline_known)
                line(Word::core_deadline_planned, {base::day_arg(*core_.deadline)});
            else if (left < 0)
                line(Word::core_deadline_over,
                     {base::whole_arg(-left), base::day_arg(*core_.deadline)});
            else
                line(Word::core_deadline, {base::whole_arg(left), base::day_arg(*core_.deadline)});
        }
        if (core_.off_on && core_.standing == CoreStanding::fitted)
            line(Word::core_off_planned, {base::day_arg(*core_.off_on)});
        for (const timeline::CoreStepState& step : core_.steps)
            line(step.said.reference.empty() ? Word::core_step : Word::core_step_with,
                 {base::word_arg(core_stage_word(step.said.stage)),
                  base::day_arg(step.on),
                  base::text_arg(step.said.reference)});
        if (!core_.credit_on || core_.standing == CoreStanding::settled) return;
        if (core_.is_overdue)
            line(Word::core_credit_overdue, {});
        else
            line(core_.said.credit_days ? Word::core_credit_on : Word::core_credit_on_usual,
                 {base::day_arg(*core_.credit_on)});
    }

    void what_goes() {
        const facts::Core& said = core_.said;
        if (!said.serial.empty()) line(Word::core_serial, {base::text_arg(said.serial)});
        if (!said.part_numbers.empty())
            line(Word::core_numbers, {base::text_arg(said.part_numbers)});
        if (said.log_card) line(Word::core_log_card, {});
        if (said.export_by) line(Word::core_export_by, {base::day_arg(*said.export_by)});
        if (said.charge && !said.kit.empty())
            line(Word::core_charged_with,
                 {base::money_arg(*said.charge), base::text_arg(said.kit)});
        else if (said.charge)
            line(Word::core_charged, {base::money_arg(*said.charge)});
    }

    const CoreWorked& core_;
    base::Currency home_;
    base::Date today_;
    SumsRow row_;
};

/// Whether the part with its serial number, if it is aboard, has a part number that is taken.
void check_number(const Assessed& aircraft, CoreWorked& core) {
    const facts::Core& said = core.said;
    if (said.serial.empty() || said.part_numbers.empty()) return;
    for (const timeline::PartState& part : aircraft.parts) {
        if (part.serial != said.serial || part.part_number.empty()) continue;
        const auto plain = [](const std::string& text) {
            std::string out;
            for (const char sign : text)
                if (sign != ' ') out += sign;
            return out;
        };
        const std::string taken = ',' + plain(said.part_numbers) + ',';
        if (taken.find(',' + plain(part.part_number) + ',') != std::string::npos) continue;
        base::Problem problem = base::trouble(base::Trouble::core_number,
                                              {core_label(said),
                                               base::text_arg(said.serial),
                                               base::text_arg(part.part_number),
                                               base::text_arg(said.part_numbers)});
        problem.severity = base::Severity::caution;
        core.notes.push_back(std::move(problem));
    }
}

/// What can be counted on of the open ones, with what each adds.
void add_top(const std::vector<CoreWorked>& cores, base::Currency home, SumsView& view) {
    Figure counted;
    budget::Points sum;
    std::int32_t open = 0;
    for (const CoreWorked& core : cores) {
        if (!is_open(core.standing) || core.said.destroy) continue;
        ++open;
        if (!core.known) continue;
        sum.low += core.credit.low;
        sum.likely += core.credit.likely;
        sum.high += core.credit.high;
    }
    const auto money = [&](std::int64_t minor_units) {
        return base::money_arg({minor_units, home});
    };
    counted.text = {Word::cores_counted, {money(sum.likely)}};
    counted.why = {{Word::why_cores, {}}, counted.text, {}};
    for (const CoreWorked& core : cores)
        if (is_open(core.standing) && !core.said.destroy && core.known)
            explain_core(counted.why, core, home);
    add(counted.why, Word::why_cores_rule, {});
    add_sum(counted.why, Word::why_cores_sum, {money(sum.likely)});
    view.top.push_back(std::move(counted));
    view.told.push_back({Word::cores_open, {base::whole_arg(open)}});
    if (sum.low != sum.high)
        view.told.push_back({Word::cores_bounds, {money(sum.low), money(sum.high)}});
}

}  // namespace

void explain_core(Why& why, const CoreWorked& core, base::Currency home) {
    const auto money = [&](std::int64_t minor_units) {
        return base::money_arg({minor_units, home});
    };
    add(why, Word::why_money_credit, {core_label(core.said), money(core.credit.likely)}, core.fact);
    if (core.outcomes.size() < 2) return;
    for (const budget::CoreOutcome& one : core.outcomes) {
        const base::Arg grade = base::word_arg(core_grade_word(one.grade));
        if (one.permille > 0)
            add(why,
                Word::core_outcome,
                {grade, money(one.amount), base::short_decimal_arg(one.permille, 1)});
        else
            add(why, Word::core_outcome_open, {grade, money(one.amount)});
    }
}

SumsView make_cores_view(const Assessed& aircraft, const Living& living) {
    SumsView view;
    view.id = aircraft.state.id;
    view.registration = aircraft.state.registration;
    view.of = SumsOf::cores;
    const budget::Setting setting =
        budget::setting_of(aircraft.state, aircraft.today, pay_days(living));
    std::vector<CoreWorked> cores = budget::cores_of(aircraft.state.money.cores, setting);
    for (CoreWorked& core : cores)
        check_number(aircraft, core);
    if (cores.empty()) view.missing = {Word::cores_nothing, {}};
    std::stable_sort(
        cores.begin(), cores.end(), [](const CoreWorked& one, const CoreWorked& other) {
            if (one.deadline.has_value() != other.deadline.has_value())
                return one.deadline.has_value();
            return one.deadline && *one.deadline < *other.deadline;
        });
    add_top(cores, setting.home, view);
    constexpr std::array titles{
        Word::cores_now, Word::cores_on_aircraft, Word::cores_away, Word::cores_done};
    for (std::size_t group = 0; group < titles.size(); ++group) {
        SumsBlock block;
        block.title = {titles[group], {}};
        block.opens = SumsOpens::core_step;
        for (const CoreWorked& core : cores)
            if (static_cast<std::size_t>(group_of(core)) == group)
                block.rows.push_back(CoreWords{core, setting.home, aircraft.today}.row());
        if (!block.rows.empty()) view.blocks.push_back(std::move(block));
    }
    view.notes.push_back({Word::money_estimate, {base::day_arg(aircraft.today)}});
    view.notes.push_back({Word::cores_late_note, {}});
    view.notes.push_back({Word::cores_scrap_note, {}});
    view.notes.push_back({Word::money_advice, {}});
    return view;
}

}  // namespace twoclocks::views
