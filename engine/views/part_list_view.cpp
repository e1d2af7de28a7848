#include "engine/views/part_list_view.hpp"

#include <algorithm>
#include <set>
#include <tuple>

#include "engine/base/message_args.hpp"
#include "engine/base/order.hpp"
#include "engine/views/record_parts.hpp"

namespace twoclocks::views {
namespace {

using base::Id;
using base::Message;
using base::Word;
using timeline::PartState;
using timeline::Whereabouts;

/// Small letters of ASCII; others are compared as they are.
[[nodiscard]] std::string lower(std::string text) {
    for (char& sign : text) {
        if (sign >= 'A' && sign <= 'Z') sign = static_cast<char>(sign - 'A' + 'a');
    }
    return text;
}

[[nodiscard]] const std::string& name_of(const PartState& part) {
    return part.name.empty() ? part.part_number : part.name;
}

[[nodiscard]] bool answers(const PartState& part, const std::string& search) {
    if (search.empty()) return true;
    std::string words;
    for (const std::string* each : {&part.name,
                                    &part.part_number,
                                    &part.serial,
                                    &part.position,
                                    &part.chapter,
                                    &part.place,
                                    &part.owner,
                                    &part.lent_to}) {
        words += *each + ' ';
    }
    return lower(words).find(lower(search)) != std::string::npos;
}

[[nodiscard]] PartRow row_of(const PartState& part, const std::string& inside) {
    PartRow row;
    row.part = part.id;
    row.name = {Word::as_told, {base::text_arg(name_of(part))}};
    row.plate = {Word::record_part_detail,
                 {base::text_arg(part.part_number), base::text_arg(part.serial)}};
    // What is on no aircraft has a place or a borrower where others have a position.
    const std::string& at = part.whereabouts == Whereabouts::fitted ? part.position
                            : part.whereabouts == Whereabouts::lent ? part.lent_to
                                                                    : part.place;
    row.position =
        at.empty() ? Message{Word::blank, {}} : Message{Word::as_told, {base::text_arg(at)}};
    row.since_new = part_hours(part.tsn, part.tsn_estimated);
    row.since_overhaul = part_hours(part.tso, part.tso_estimated);
    row.condition = {condition_word(part.condition), {}};
    if (!inside.empty()) row.marks.push_back({Word::part_flag_inside, {base::text_arg(inside)}});
    const auto mark = [&](bool is, Word word) {
        if (is) row.marks.push_back({word, {}});
    };
    mark(part.history_unknown, Word::part_flag_history);
    mark((part.tsn && part.tsn_estimated) || (part.tso && part.tso_estimated),
         Word::part_flag_estimate);
    mark(!part.questions.empty(), Word::flag_questioned);
    mark(part.unknown_records > 0, Word::flag_newer);
    mark(!part.problems.empty(), Word::part_flag_doubt);
    return row;
}

/// Where a part is, by what the outermost assembly is on or in. In the order of the groups.
struct Berth {
    enum class Kind : std::uint8_t { aircraft, shelf, lent, scrapped, astray } kind;
    std::string registration{};
    Id aircraft{};

    bool operator<(const Berth& other) const {
        return std::tie(kind, registration, aircraft) <
               std::tie(other.kind, other.registration, other.aircraft);
    }
};

[[nodiscard]] Message title_of(const Berth& berth) {
    switch (berth.kind) {
        case Berth::Kind::aircraft:
            return {Word::parts_on, {base::text_arg(berth.registration)}};
        case Berth::Kind::shelf:
            return {Word::parts_shelf, {}};
        case Berth::Kind::lent:
            return {Word::parts_lent, {}};
        case Berth::Kind::scrapped:
            return {Word::parts_scrapped, {}};
        case Berth::Kind::astray:
            break;
    }
    return {Word::parts_astray, {}};
}

/// Parts in the order of their assemblies.
class Shelves {
  public:
    Shelves(const std::vector<PartState>& parts,
            const std::map<Id, std::string>& registrations,
            const PartsAsked& asked)
        : registrations_(registrations), asked_(asked) {
        for (const PartState& part : parts)
            order_.push_back(&part);
        base::sort_stably(order_, [](const PartState* left, const PartState* right) {
            return sort_key(*left) < sort_key(*right);
        });
        for (const PartState* part : order_)
            by_id_[part->id] = part;
    }

    void fill(Id aircraft, PartListView& view) {
        for (const PartState* part : order_) {
            if (by_id_.count(part->host) == 0) lay(*part, berth_of(*part), 0);
        }
        // What is in itself hangs on nothing.
        for (const PartState* part : order_)
            lay(*part, {Berth::Kind::astray}, 0);
        std::int64_t shown = 0;
        std::int64_t all = 0;
        for (auto& [berth, group] : groups_) {
            if (!asked_.everywhere && berth.aircraft != aircraft) continue;
            all += group.all;
            shown += static_cast<std::int64_t>(group.rows.size());
            if (group.rows.empty()) continue;
            view.groups.push_back({title_of(berth), std::move(group.rows)});
        }
        view.summary = {Word::parts_summary, {base::whole_arg(shown), base::whole_arg(all)}};
    }

  private:
    struct Group {
        std::vector<PartRow> rows;
        std::int64_t all{0};
    };

    [[nodiscard]] static std::tuple<std::string, std::string, std::string, Id> sort_key(
        const PartState& part) {
        return {lower(name_of(part)), lower(part.position), part.serial, part.id};
    }

    [[nodiscard]] Berth berth_of(const PartState& part) const {
        switch (part.whereabouts) {
            case Whereabouts::shelf:
                return {Berth::Kind::shelf};
            case Whereabouts::lent:
                return {Berth::Kind::lent};
            case Whereabouts::scrapped:
                return {Berth::Kind::scrapped};
            case Whereabouts::fitted:
                break;
        }
        const auto found = registrations_.find(part.host);
        if (found == registrations_.end()) return {Berth::Kind::astray};
        return {Berth::Kind::aircraft, found->second, part.host};
    }

    void lay(const PartState& part, const Berth& berth, std::int32_t depth) {
        if (!laid_.insert(part.id).second) return;
        Group& group = groups_[berth];
        ++group.all;
        if (answers(part, asked_.search)) {
            const auto host = by_id_.find(part.host);
            const bool cut_off = !asked_.search.empty() && host != by_id_.end();
            group.rows.push_back(
                row_of(part, cut_off ? timeline::part_label(*host->second) : std::string{}));
            group.rows.back().depth = asked_.search.empty() ? depth : 0;
        }
        for (const PartState* inside : order_) {
            if (inside->host == part.id) lay(*inside, berth, depth + 1);
        }
    }

    const std::map<Id, std::string>& registrations_;
    const PartsAsked& asked_;
    std::vector<const PartState*> order_;
    std::map<Id, const PartState*> by_id_;
    std::map<Berth, Group> groups_;
    std::set<Id> laid_;
};

}  // namespace

Message part_hours(const std::optional<base::FlightTime>& hours, bool estimated) {
    if (!hours) return {Word::unknown_figure, {}};
    return {estimated ? Word::part_about : Word::part_gained, {base::hours_used_arg(*hours)}};
}

PartListView make_part_list(const std::vector<PartState>& parts,
                            const std::map<Id, std::string>& registrations,
                            Id aircraft,
                            const PartsAsked& asked) {
    PartListView view;
    view.aircraft = aircraft;
    const auto found = registrations.find(aircraft);
    if (found != registrations.end()) view.registration = found->second;
    Shelves{parts, registrations, asked}.fill(aircraft, view);
    return view;
}

}  // namespace twoclocks::views
