#include "engine/views/record.hpp"

#include "engine/base/message_args.hpp"
#include "engine/views/record_limit.hpp"
#include "engine/views/record_lines.hpp"
#include "engine/views/record_listed.hpp"
#include "engine/views/record_parts.hpp"

namespace twoclocks::views {
namespace {

using base::Message;
using base::Word;

struct What {
    Message operator()(const facts::UnknownKind& f) const {
        return one_text(Word::record_newer, f.kind);
    }

    Message operator()(const facts::AircraftAdded& f) const {
        return one_text(Word::record_aircraft, f.registration);
    }

    Message operator()(const facts::AircraftChanged& f) const {
        return one_text(Word::record_aircraft_changed, f.registration);
    }

    Message operator()(const facts::LimitSet& f) const {
        if (f.hours && f.months) {
            return {Word::record_limit_both,
                    {base::hours_left_arg(*f.hours), base::whole_arg(*f.months)}};
        }
        if (f.hours) return {Word::record_limit_hours, {base::hours_left_arg(*f.hours)}};
        if (f.months) return {Word::record_limit_months, {base::whole_arg(*f.months)}};
        if (f.days) return {Word::record_limit_days, {base::whole_arg(*f.days)}};
        return {Word::record_limit_counts, {}};
    }

    Message operator()(const facts::MeterFitted& f) const {
        return one_text(Word::record_meter, f.name);
    }

    Message operator()(const facts::Reading& f) const {
        return {Word::record_reading, {base::hours_used_arg(f.reads)}};
    }

    Message operator()(const facts::ItemAdded& f) const {
        return one_text(Word::record_item, f.name);
    }

    Message operator()(const facts::ItemChanged& f) const {
        return one_text(Word::record_item_changed, f.name);
    }

    Message operator()(const facts::WorkDone& f) const {
        return one_text(Word::record_work, f.what);
    }

    Message operator()(const facts::UsagePlanned& f) const {
        return {Word::record_plan, {base::hours_left_arg(f.month)}};
    }

    Message operator()(const facts::OutOfService& f) const {
        if (f.stored && !f.until) return {Word::record_stored_open, {}};
        if (f.stored) return {Word::record_stored, {base::day_arg(*f.until)}};
        if (!f.until) return {Word::record_spell_open, {}};
        return {Word::record_spell, {base::day_arg(*f.until)}};
    }

    Message operator()(const facts::Note& f) const { return one_text(Word::record_note, f.text); }

    Message operator()(const facts::Correction& f) const {
        return f.instead ? record_what(*f.instead) : Message{Word::record_correction, {}};
    }

    Message operator()(const facts::Withdrawal&) const { return {Word::record_withdrawal, {}}; }

    Message operator()(const facts::Answer&) const { return {Word::record_answer, {}}; }

    Message operator()(const facts::Permit& f) const {
        return one_text(Word::record_permit, f.issuer);
    }

    template <PartRecord Part>
    Message operator()(const Part& f) const {
        return part_what(f);
    }

    template <ListedRecord Listed>
    Message operator()(const Listed& f) const {
        return what_of(f);
    }
};

[[nodiscard]] base::Arg author_of(const facts::Fact& fact) {
    return fact.by.empty() ? base::word_arg(Word::unnamed_author) : base::text_arg(fact.by);
}

constexpr std::int64_t ms_per_minute = 60'000;
constexpr std::int64_t minutes_per_day = 24LL * 60;

[[nodiscard]] base::Arg written_on(const facts::Fact& fact) {
    constexpr std::int64_t last_day = 84'000;
    const std::int64_t day =
        std::min(fact.stamp.wall_ms / (ms_per_minute * minutes_per_day), last_day);
    return base::day_arg({static_cast<std::int32_t>(day)});
}

/// Hour and minute, UTC: "09:05".
[[nodiscard]] std::string clock_time(std::int64_t wall_ms) {
    const std::int64_t minute = wall_ms / ms_per_minute % minutes_per_day;
    const auto two = [](std::int64_t number) {
        return (number < 10 ? "0" : "") + std::to_string(number);
    };
    return two(minute / 60) + ':' + two(minute % 60);
}

[[nodiscard]] Message why_or_blank(const std::string& why) {
    return why.empty() ? Message{Word::blank, {}} : one_text(Word::record_why, why);
}

struct Detail {
    Message operator()(const facts::AircraftAdded& f) const {
        return {Word::record_aircraft_detail, {base::text_arg(f.type), base::text_arg(f.serial)}};
    }

    Message operator()(const facts::MeterFitted& f) const {
        return {Word::record_meter_detail,
                {base::hours_left_arg(f.reads), base::hours_left_arg(f.total)}};
    }

    Message operator()(const facts::WorkDone& f) const {
        if (!f.total) return {Word::record_work_detail_none, {}};
        return {Word::record_work_detail, {base::hours_left_arg(*f.total)}};
    }

    Message operator()(const facts::LimitSet& f) const {
        if (f.source.empty()) return {Word::source_none, {}};
        return one_text(Word::record_source, f.source);
    }

    Message operator()(const facts::Correction& f) const { return why_or_blank(f.why); }

    Message operator()(const facts::Withdrawal& f) const { return why_or_blank(f.why); }

    Message operator()(const facts::Answer& f) const { return why_or_blank(f.why); }

    Message operator()(const facts::UsagePlanned& f) const { return why_or_blank(f.why); }

    Message operator()(const facts::OutOfService& f) const { return why_or_blank(f.why); }

    Message operator()(const facts::AircraftChanged& f) const { return why_or_blank(f.why); }

    template <PartRecord Part>
    Message operator()(const Part& f) const {
        return part_detail(f);
    }

    template <ListedRecord Listed>
    Message operator()(const Listed& f) const {
        const std::vector<Message> lines = more_of(f);
        return lines.empty() ? Message{Word::blank, {}} : lines.front();
    }

    template <class Other>
    Message operator()(const Other&) const {
        return {Word::blank, {}};
    }
};

/// Fields that `what` and `detail` leave out.
struct More {
    std::vector<Message>& out;

    void text(Word word, const std::string& text) const {
        if (!text.empty()) out.push_back(one_text(word, text));
    }

    void count(Word word, const std::optional<base::Count>& count) const {
        if (count) out.push_back({word, {base::whole_arg(count->value)}});
    }

    void operator()(const facts::AircraftAdded& f) const {
        if (f.manufactured)
            out.push_back({Word::record_manufactured, {base::day_arg(*f.manufactured)}});
        if (f.invented) out.push_back({Word::record_invented, {}});
    }

    void operator()(const facts::MeterFitted& f) const {
        constexpr std::array words{Word::drive_collective,
                                   Word::drive_oil_pressure,
                                   Word::drive_tachometer,
                                   Word::drive_electrical,
                                   Word::drive_other};
        out.push_back(
            {Word::record_drive, {base::word_arg(words[static_cast<std::size_t>(f.drive)])}});
        text(Word::record_why, f.why);
    }

    void operator()(const facts::Reading& f) const {
        count(Word::record_counts, f.landings);
        count(Word::record_starts, f.starts);
    }

    void operator()(const facts::WorkDone& f) const {
        text(Word::record_place, f.place);
        text(Word::record_done_by, f.done_by);
        text(Word::record_reference, f.reference);
    }

    void operator()(const facts::LimitSet& f) const { add_limit_lines(f, out); }

    void operator()(const facts::Permit& f) const {
        text(Word::record_reference, f.reference);
        text(Word::record_route, f.route);
        if (f.hours) out.push_back({Word::record_permit_hours, {base::hours_left_arg(*f.hours)}});
        if (f.until) out.push_back({Word::record_permit_until, {base::day_arg(*f.until)}});
    }

    template <PartRecord Part>
    void operator()(const Part& f) const {
        for (Message& line : part_more(f))
            out.push_back(std::move(line));
    }

    void operator()(const facts::OutOfService& f) const {
        text(Word::record_source, f.source);
        text(Word::record_revision, f.revision);
    }

    /// The first of its lines stands as the detail.
    template <ListedRecord Listed>
    void operator()(const Listed& f) const {
        const std::vector<Message> lines = more_of(f);
        if (lines.size() > 1) out.insert(out.end(), lines.begin() + 1, lines.end());
    }

    template <class Other>
    void operator()(const Other&) const {}
};

}  // namespace

Message record_what(const facts::Body& body) {
    return std::visit(What{}, body.fields);
}

Message record_detail(const facts::Body& body) {
    return std::visit(Detail{}, body.fields);
}

std::vector<Message> told_lines(const facts::Body& body) {
    if (const auto* correction = std::get_if<facts::Correction>(&body.fields))
        return correction->instead ? told_lines(*correction->instead) : std::vector<Message>{};
    std::vector<Message> out;
    const Message detail = record_detail(body);
    if (detail.word != Word::blank) out.push_back(detail);
    std::visit(More{out}, body.fields);
    out.push_back({Word::record_on, {base::day_arg(body.on)}});
    return out;
}

std::vector<Message> record_lines(const facts::Fact& fact) {
    std::vector<Message> out;
    const bool corrects = std::holds_alternative<facts::Correction>(fact.body.fields);
    const Message why = record_detail(fact.body);
    if (corrects && why.word != Word::blank) out.push_back(why);
    for (Message& line : told_lines(fact.body))
        out.push_back(std::move(line));
    out.push_back(told_by_device(fact));
    out.push_back(one_text(Word::record_id, base::print_id(fact.id)));
    return out;
}

Message told_by(const facts::Fact& fact) {
    return {Word::told_by, {author_of(fact), written_on(fact)}};
}

Message told_by_device(const facts::Fact& fact) {
    return {Word::told_by_device,
            {author_of(fact),
             written_on(fact),
             base::text_arg(clock_time(fact.stamp.wall_ms)),
             base::text_arg(short_device(fact.stamp.device))}};
}

std::string short_device(std::string_view device) {
    constexpr std::size_t short_form = 6;
    return std::string{device.substr(0, short_form)};
}

}  // namespace twoclocks::views
