#include "engine/views/record_parts.hpp"

#include <array>

#include "engine/base/message_args.hpp"
#include "engine/views/record_lines.hpp"

namespace twoclocks::views {
namespace {

using base::Message;
using base::Word;

[[nodiscard]] Message text_or(Word with, const std::string& text, Word without) {
    return text.empty() ? Message{without, {}} : one_text(with, text);
}

[[nodiscard]] Message host_total(const std::optional<base::FlightTime>& total) {
    if (!total) return {Word::record_host_total_none, {}};
    return {Word::record_host_total, {base::hours_used_arg(*total)}};
}

void add_condition(Lines& lines, facts::PartCondition condition) {
    lines.out.push_back({Word::record_condition, {base::word_arg(condition_word(condition))}});
}

}  // namespace

Word condition_word(facts::PartCondition condition) {
    constexpr std::array words{Word::condition_new,
                               Word::condition_overhauled,
                               Word::condition_repaired,
                               Word::condition_inspected,
                               Word::condition_as_removed,
                               Word::condition_unknown,
                               Word::condition_unserviceable};
    return words[static_cast<std::size_t>(condition)];
}

Message part_what(const facts::PartAdded& fields) {
    return one_text(Word::record_part, fields.name.empty() ? fields.part_number : fields.name);
}

Message part_what(const facts::PartFitted& fields) {
    return text_or(Word::record_part_fitted_at, fields.position, Word::record_part_fitted);
}

Message part_what(const facts::PartRemoved& fields) {
    if (fields.temporarily) return {Word::record_part_temporarily, {}};
    return text_or(Word::record_part_removed_why, fields.why, Word::record_part_removed);
}

Message part_what(const facts::PartScrapped&) {
    return {Word::record_part_scrapped, {}};
}

Message part_what(const facts::PartMoved& fields) {
    if (!fields.lent_to.empty()) return one_text(Word::record_part_lent, fields.lent_to);
    return text_or(Word::record_part_moved_to, fields.place, Word::record_part_moved);
}

Message part_what(const facts::PartRebuilt&) {
    return {Word::record_part_rebuilt, {}};
}

Message part_detail(const facts::PartAdded& fields) {
    return {Word::record_part_detail,
            {base::text_arg(fields.part_number), base::text_arg(fields.serial)}};
}

Message part_detail(const facts::PartFitted& fields) {
    return host_total(fields.host_total);
}

Message part_detail(const facts::PartRemoved& fields) {
    return host_total(fields.host_total);
}

Message part_detail(const facts::PartScrapped& fields) {
    return text_or(Word::record_proof, fields.proof, Word::blank);
}

Message part_detail(const facts::PartMoved& fields) {
    return text_or(Word::record_why, fields.why, Word::blank);
}

Message part_detail(const facts::PartRebuilt& fields) {
    return one_text(Word::record_document, fields.document);
}

std::vector<Message> part_more(const facts::PartAdded& fields) {
    Lines lines;
    if (!fields.tsn) lines.out.push_back({Word::record_tsn_none, {}});
    lines.time(Word::record_tsn, fields.tsn);
    lines.time(Word::record_tso, fields.tso);
    lines.count(Word::record_overhauls, fields.overhauls);
    lines.count(Word::record_counts, fields.landings);
    lines.count(Word::record_starts, fields.starts);
    lines.date(Word::record_manufactured, fields.manufactured);
    lines.date(Word::record_cured, fields.cured);
    lines.date(Word::record_shipped, fields.shipped);
    add_condition(lines, fields.condition);
    lines.text(Word::record_papers, fields.papers);
    lines.truth(Word::record_history_unknown, fields.history_unknown);
    lines.text(Word::record_owner, fields.owner);
    lines.date(Word::record_lent_until, fields.lent_until);
    return std::move(lines.out);
}

std::vector<Message> part_more(const facts::PartFitted& fields) {
    Lines lines;
    lines.time(Word::record_tsn, fields.tsn);
    lines.count(Word::record_counts, fields.host_landings);
    lines.count(Word::record_starts, fields.host_starts);
    lines.text(Word::record_reference, fields.reference);
    return std::move(lines.out);
}

std::vector<Message> part_more(const facts::PartRemoved& fields) {
    Lines lines;
    lines.count(Word::record_counts, fields.host_landings);
    lines.count(Word::record_starts, fields.host_starts);
    add_condition(lines, fields.condition);
    if (fields.temporarily) lines.text(Word::record_why, fields.why);
    return std::move(lines.out);
}

std::vector<Message> part_more(const facts::PartScrapped&) {
    return {};
}

std::vector<Message> part_more(const facts::PartMoved& fields) {
    Lines lines;
    if (!fields.lent_to.empty()) lines.text(Word::record_place, fields.place);
    lines.text(Word::record_owner, fields.owner);
    lines.date(Word::record_return_by, fields.return_by);
    return std::move(lines.out);
}

std::vector<Message> part_more(const facts::PartRebuilt& fields) {
    Lines lines;
    lines.time(Word::record_host_total, fields.host_total);
    lines.text(Word::record_done_by, fields.done_by);
    lines.text(Word::record_place, fields.place);
    return std::move(lines.out);
}

}  // namespace twoclocks::views
