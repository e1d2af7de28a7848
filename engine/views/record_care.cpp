#include "engine/views/record_care.hpp"

#include <array>

#include "engine/base/message_args.hpp"
#include "engine/views/record_lines.hpp"

namespace twoclocks::views {
namespace {

using base::Message;
using base::Word;

[[nodiscard]] Message measured(Word word, std::int64_t thousandths, const std::string& unit) {
    return {word, {base::text_arg(thousandths_text(thousandths)), base::text_arg(unit)}};
}

template <class T, std::size_t Count>
[[nodiscard]] Word pick(const std::array<Word, Count>& words, T value) {
    return words[static_cast<std::size_t>(value)];
}

}  // namespace

std::string thousandths_text(std::int64_t thousandths) {
    constexpr std::int64_t whole = 1000;
    std::string out = std::to_string(thousandths / whole);
    std::string rest = std::to_string(whole + thousandths % whole).substr(1);
    while (!rest.empty() && rest.back() == '0')
        rest.pop_back();
    return rest.empty() ? out : out + '.' + rest;
}

Word applicability_word(facts::Applicability applies) {
    constexpr std::array words{Word::applies_unknown, Word::applies_yes, Word::applies_no};
    return pick(words, applies);
}

Word event_word(facts::EventKind event) {
    constexpr std::array words{Word::event_hard_landing,
                               Word::event_overspeed,
                               Word::event_overtemperature,
                               Word::event_overtorque,
                               Word::event_sudden_stoppage,
                               Word::event_vibration,
                               Word::event_lightning,
                               Word::event_other};
    return pick(words, event);
}

Word sense_word(facts::WearSense sense) {
    constexpr std::array words{Word::sense_at_most, Word::sense_at_least};
    return pick(words, sense);
}

Word adjust_word(facts::AdjustReason reason) {
    constexpr std::array words{Word::adjust_dead, Word::adjust_rolled_over, Word::adjust_other};
    return pick(words, reason);
}

Word operation_word(facts::Operation operation) {
    constexpr std::array words{Word::operation_ordinary,
                               Word::operation_agricultural,
                               Word::operation_external_load,
                               Word::operation_training,
                               Word::operation_emergency,
                               Word::operation_other};
    return pick(words, operation);
}

Word in_force_word(facts::InForce in_force) {
    constexpr std::array words{
        Word::in_force_always, Word::in_force_storage, Word::in_force_return};
    return pick(words, in_force);
}

Message care_what(const facts::Directive& fields) {
    return one_text(Word::record_directive, fields.number);
}

Message care_what(const facts::AlternativeMeans& fields) {
    return one_text(Word::record_alternative, fields.reference);
}

Message care_what(const facts::Event& fields) {
    return {Word::record_event, {base::word_arg(event_word(fields.happened))}};
}

Message care_what(const facts::WearLimit& fields) {
    return {Word::record_wear_limit,
            {base::word_arg(sense_word(fields.sense)),
             base::text_arg(thousandths_text(fields.limit_thousandths)),
             base::text_arg(fields.unit)}};
}

Message care_what(const facts::Wear& fields) {
    return measured(Word::record_wear, fields.value_thousandths, fields.unit);
}

Message care_what(const facts::MeterAdjusted& fields) {
    return {Word::record_meter_adjusted,
            {base::hours_used_arg(fields.hours), base::word_arg(adjust_word(fields.reason))}};
}

Message care_what(const facts::WorkRule& fields) {
    return one_text(Word::record_work_rule, fields.name);
}

Message care_what(const facts::HoursFactor& fields) {
    return {Word::record_hours_factor,
            {base::word_arg(operation_word(fields.operation)),
             base::text_arg(thousandths_text(fields.factor_thousandths))}};
}

Message care_what(const facts::FlownAs& fields) {
    return {Word::record_flown_as,
            {base::hours_used_arg(fields.hours), base::word_arg(operation_word(fields.operation))}};
}

std::vector<Message> care_more(const facts::Directive& fields) {
    Lines lines;
    lines.out.push_back(
        {Word::record_applies, {base::word_arg(applicability_word(fields.applies))}});
    lines.text(Word::record_why, fields.applies_why);
    lines.text(Word::record_revision, fields.revision);
    lines.text(Word::record_issuer, fields.issuer);
    lines.date(Word::record_effective, fields.effective_on);
    lines.text(Word::record_serials, fields.serials);
    lines.text(Word::record_applies_part, fields.part_number);
    lines.truth(Word::record_before_flight, fields.before_flight);
    lines.truth(Word::record_credit, fields.credit);
    if (!fields.replaces.empty())
        lines.whole(Word::record_replaces, static_cast<std::int32_t>(fields.replaces.size()));
    if (!fields.ended_by.empty())
        lines.whole(Word::record_ended_by, static_cast<std::int32_t>(fields.ended_by.size()));
    return lines.out;
}

std::vector<Message> care_more(const facts::AlternativeMeans& fields) {
    Lines lines;
    lines.text(Word::record_issuer, fields.issuer);
    lines.text(Word::record_method, fields.method);
    lines.time(Word::record_limit_hours, fields.interval.hours);
    lines.whole(Word::record_limit_months, fields.interval.months);
    lines.whole(Word::record_limit_days, fields.interval.days);
    lines.count(Word::record_limit_landings, fields.interval.landings);
    lines.count(Word::record_limit_starts, fields.interval.starts);
    lines.time(Word::record_grace_hours, fields.grace_hours);
    lines.whole(Word::record_grace_days, fields.grace_days);
    lines.date(Word::record_permit_until, fields.until);
    return lines.out;
}

std::vector<Message> care_more(const facts::Event& fields) {
    Lines lines;
    lines.text(Word::record_found, fields.found);
    lines.time(Word::record_work_detail, fields.total);
    lines.source(fields.source, fields.revision);
    return lines.out;
}

std::vector<Message> care_more(const facts::WearLimit& fields) {
    Lines lines;
    lines.source(fields.source, fields.revision);
    return lines.out;
}

std::vector<Message> care_more(const facts::Wear& fields) {
    Lines lines;
    lines.time(Word::record_work_detail, fields.total);
    lines.text(Word::record_done_by, fields.done_by);
    lines.text(Word::record_reference, fields.reference);
    return lines.out;
}

std::vector<Message> care_more(const facts::MeterAdjusted& fields) {
    Lines lines;
    lines.source(fields.source, {});
    lines.time(Word::record_reads, fields.reads);
    lines.text(Word::record_why, fields.why);
    return lines.out;
}

std::vector<Message> care_more(const facts::WorkRule& fields) {
    Lines lines;
    lines.source(fields.source, fields.revision);
    lines.whole(Word::record_renews, static_cast<std::int32_t>(fields.renews.size()));
    return lines.out;
}

std::vector<Message> care_more(const facts::HoursFactor& fields) {
    Lines lines;
    lines.source(fields.source, fields.revision);
    return lines.out;
}

std::vector<Message> care_more(const facts::FlownAs& fields) {
    Lines lines;
    lines.date(Word::record_from, fields.from);
    lines.text(Word::record_why, fields.why);
    return lines.out;
}

}  // namespace twoclocks::views
