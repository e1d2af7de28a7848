#include <algorithm>
#include <map>

#include "engine/base/message_args.hpp"
#include "engine/base/order.hpp"
#include "engine/base/region.hpp"
#include "engine/timeline/question.hpp"
#include "engine/views/make_views.hpp"
#include "engine/views/record.hpp"

namespace twoclocks::views {
namespace {

using base::Message;
using base::Word;
using facts::Fact;
using facts::Journal;
using timeline::Question;
using timeline::QuestionKind;

[[nodiscard]] bool takes_back(const Fact& fact) {
    return std::holds_alternative<facts::Withdrawal>(fact.body.fields);
}

[[nodiscard]] bool is_answer(const Fact& fact) {
    return std::holds_alternative<facts::Answer>(fact.body.fields);
}

[[nodiscard]] bool replaces(const Fact& later, const Fact& fact) {
    if (const auto* correction = std::get_if<facts::Correction>(&later.body.fields)) {
        return names(correction->replaces, fact);
    }
    const auto* withdrawal = std::get_if<facts::Withdrawal>(&later.body.fields);
    return withdrawal != nullptr && names(withdrawal->withdraws, fact);
}

/// A correction that puts a record of a newer version in place is not understood either.
[[nodiscard]] bool is_newer(const facts::Body& body) {
    if (const auto* correction = std::get_if<facts::Correction>(&body.fields))
        return correction->instead && is_newer(*correction->instead);
    return std::holds_alternative<facts::UnknownKind>(body.fields);
}

[[nodiscard]] bool is_on(const HistoryRow& left, const HistoryRow& right) {
    return left.on > right.on;
}

/// The words that name an aircraft or a part: as it was first added.
[[nodiscard]] std::string name_of(const Journal& journal, base::Id subject) {
    for (const Fact* fact : journal.with_id(subject)) {
        if (const auto* added = std::get_if<facts::AircraftAdded>(&fact->body.fields))
            return added->registration;
        if (const auto* part = std::get_if<facts::PartAdded>(&fact->body.fields))
            return (part->name.empty() ? part->part_number : part->name) + ' ' + part->serial;
    }
    return {};
}

[[nodiscard]] Message detail_of(const Journal& journal, const Fact& fact) {
    const std::string name = name_of(journal, aircraft_of(fact.body));
    const bool says_itself = std::holds_alternative<facts::AircraftAdded>(fact.body.fields) ||
                             std::holds_alternative<facts::PartAdded>(fact.body.fields);
    if (says_itself || name.empty()) return record_detail(fact.body);
    // A part and what it is fitted to.
    const auto& about = fact.body.about;
    const std::string other = about.size() > 1 ? name_of(journal, about[1]) : std::string{};
    if (!other.empty())
        return {Word::record_of_both, {base::text_arg(name), base::text_arg(other)}};
    return {Word::record_of, {base::text_arg(name)}};
}

[[nodiscard]] Word word_of(QuestionKind kind) {
    switch (kind) {
        case QuestionKind::same_id:
            return Word::question_same_id;
        case QuestionKind::versions:
            return Word::question_versions;
        case QuestionKind::falling:
            return Word::question_falling;
        case QuestionKind::too_fast:
            return Word::question_too_fast;
    }
    return Word::question_versions;
}

[[nodiscard]] Message in_use(const Question& question) {
    if (question.no_safe_side) return {Word::question_in_use_unknown, {}};
    if (question.kind == QuestionKind::falling || question.kind == QuestionKind::too_fast) {
        return {Word::question_in_use_higher, {}};
    }
    if (!question.in_use) return {Word::question_in_use_nothing, {}};
    return {Word::question_in_use_safer, {}};
}

/// Which facts an open question asks about; every aircraft is looked at once.
class Questioned {
  public:
    explicit Questioned(const Journal& journal) : journal_(journal) {}

    [[nodiscard]] bool holds(const Fact& fact) {
        const base::Id aircraft = aircraft_of(fact.body);
        if (aircraft.empty()) return journal_.id_is_shared(fact.id);
        if (holds(aircraft, fact.id)) return true;
        const auto* correction = std::get_if<facts::Correction>(&fact.body.fields);
        return correction != nullptr && correction->instead &&
               holds(aircraft_of(*correction->instead), fact.id);
    }

  private:
    [[nodiscard]] bool holds(base::Id aircraft, base::Id fact) {
        if (aircraft.empty()) return false;
        auto found = asked_.find(aircraft);
        if (found == asked_.end()) {
            const std::vector<base::Id> asked = timeline::facts_in_question(journal_, aircraft);
            found = asked_.emplace(aircraft, asked).first;
        }
        return std::binary_search(found->second.begin(), found->second.end(), fact);
    }

    const Journal& journal_;
    std::map<base::Id, std::vector<base::Id>> asked_;
};

[[nodiscard]] HistoryRow make_row(const Journal& journal,
                                  const Fact& fact,
                                  Questioned& questioned) {
    HistoryRow row;
    row.fact = fact.id;
    row.aircraft = aircraft_of(fact.body);
    const auto* correction = std::get_if<facts::Correction>(&fact.body.fields);
    row.on = correction != nullptr && correction->instead ? correction->instead->on : fact.body.on;
    row.date = {Word::day_figure, {base::day_arg(row.on)}};
    row.what = record_what(fact.body);
    row.detail = detail_of(journal, fact);
    row.told_by = told_by(fact);
    for (const Fact* later : journal.naming(fact.id)) {
        if (!replaces(*later, fact)) continue;
        row.corrected = row.corrected || !takes_back(*later);
        row.withdrawn = row.withdrawn || takes_back(*later);
    }
    row.unknown_kind = is_newer(fact.body);
    row.questioned = questioned.holds(fact);
    const bool is_head = !row.corrected && !row.withdrawn && !takes_back(fact) && !is_answer(fact);
    row.can_withdraw = is_head && !row.unknown_kind;
    row.can_correct = row.can_withdraw;
    return row;
}

/// Two messages that a person reads as one.
[[nodiscard]] bool same(const Message& left, const Message& right) {
    return base::say(left, {}) == base::say(right, {});
}

/// Of every side the lines that another side does not have.
void tell_apart(const Question& question, QuestionView& view) {
    std::vector<std::vector<Message>> lines;
    for (const timeline::Side& side : question.sides)
        lines.push_back(told_lines(side.fact.body));
    for (std::size_t side = 0; side < lines.size(); ++side) {
        for (const Message& line : lines[side]) {
            const bool shared = std::all_of(lines.begin(), lines.end(), [&](const auto& others) {
                return std::any_of(others.begin(), others.end(), [&](const Message& other) {
                    return same(line, other);
                });
            });
            if (!shared) view.sides[side].differs.push_back(line);
        }
    }
}

}  // namespace

HistoryRow make_history_row(const Journal& journal, const Fact& fact) {
    Questioned questioned{journal};
    return make_row(journal, fact, questioned);
}

HistoryView make_history_view(const Journal& journal, base::Id aircraft, std::string registration) {
    HistoryView view;
    view.registration = std::move(registration);
    const std::vector<const Fact*> facts =
        aircraft.empty() ? journal.in_order() : journal.about(aircraft);
    Questioned questioned{journal};
    for (auto fact = facts.rbegin(); fact != facts.rend(); ++fact) {
        view.rows.push_back(make_row(journal, **fact, questioned));
    }
    base::sort_stably(view.rows, is_on);
    return view;
}

std::vector<QuestionView> make_questions(const std::vector<Question>& questions) {
    std::vector<QuestionView> out;
    for (const Question& question : questions) {
        QuestionView view;
        view.what = {word_of(question.kind), {}};
        view.in_use = in_use(question);
        for (const timeline::Side& side : question.sides) {
            const Fact& fact = side.fact;
            view.sides.push_back({fact.id, record_what(fact.body), told_by_device(fact)});
        }
        tell_apart(question, view);
        out.push_back(std::move(view));
    }
    return out;
}

LogView make_log_view(const Assessed& aircraft) {
    LogView view;
    view.aircraft = aircraft.state.id;
    view.registration = aircraft.state.registration;
    view.has_meter = !aircraft.state.meters.empty();
    view.last = {view.has_meter ? Word::log_none : Word::log_no_meter, {}};
    view.meter_name = {Word::meter_unnamed, {}};
    if (!view.has_meter) return view;
    const timeline::MeterState& meter = aircraft.state.meters.back();
    if (!meter.name.empty()) view.meter_name = {Word::meter_named, {base::text_arg(meter.name)}};
    view.last_reads = meter.last_reads ? meter.last_reads : meter.reads;
    view.last_on = meter.last_on ? meter.last_on : meter.fitted_on;
    view.last = {Word::log_last,
                 {base::hours_used_arg(*view.last_reads), base::day_arg(*view.last_on)}};
    return view;
}

}  // namespace twoclocks::views
