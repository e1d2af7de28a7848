#include "engine/timeline/wear.hpp"

#include <algorithm>
#include <map>
#include <tuple>

#include "engine/base/order.hpp"

namespace twoclocks::timeline {
namespace {

using base::Date;
using base::Id;
using facts::Body;

/// Where a version stands among the others: its day, then the order the records were written in.
struct Key {
    Date on;
    std::int32_t place{0};
};

[[nodiscard]] bool comes_before(const Key& left, const Key& right) {
    return left.on != right.on ? left.on < right.on : left.place < right.place;
}

/// One version of a record about an item.
template <class Kind>
struct Version {
    Key key;
    Id fact;
    Kind fields;
    Standing standing;
};

template <class Kind>
using Versions = std::map<Id, std::vector<Version<Kind>>>;

template <class Kind>
[[nodiscard]] const Kind* kind_of(const Body* body) {
    if (body == nullptr || body->about.size() < 2) return nullptr;
    return std::get_if<Kind>(&body->fields);
}

/// Every version of every record of a kind, by the item it is about.
template <class Kind>
[[nodiscard]] Versions<Kind> gather(const std::vector<Record>& records, Date today) {
    Versions<Kind> out;
    std::int32_t place = 0;
    for (const Record& record : records) {
        ++place;
        // An answer may leave a version that is no measurement of this item by today.
        const auto holds = [&](const Head& head, Id item) {
            return kind_of<Kind>(head.body) != nullptr && head.body->about[1] == item &&
                   head.body->on <= today;
        };
        for (const Head& head : record.heads) {
            const Kind* fields = kind_of<Kind>(head.body);
            if (fields == nullptr) continue;
            const Id item = head.body->about[1];
            const bool sure = std::all_of(record.heads.begin(),
                                          record.heads.end(),
                                          [&](const Head& other) { return holds(other, item); });
            const Standing in_force = record.open ? Standing::disputed : Standing::settled;
            out[item].push_back({{head.body->on, place},
                                 record.root,
                                 *fields,
                                 sure ? in_force : Standing::may_not_be});
        }
    }
    for (auto& [item, versions] : out) {
        base::sort_stably(versions, [](const auto& left, const auto& right) {
            return comes_before(left.key, right.key);
        });
    }
    return out;
}

/// The earliest that the last one can be: of the records that are sure to hold, the latest by its
/// earliest version.
template <class Kind>
[[nodiscard]] std::optional<Key> floor_of(const std::vector<Version<Kind>>& versions) {
    std::map<std::int32_t, Key> earliest;
    for (const Version<Kind>& version : versions) {
        if (version.standing != Standing::may_not_be)
            earliest.emplace(version.key.place, version.key);
    }
    std::optional<Key> out;
    for (const auto& [place, key] : earliest) {
        if (!out || comes_before(*out, key)) out = key;
    }
    return out;
}

[[nodiscard]] WearPoint point_of(const Version<facts::Wear>& version) {
    const facts::Wear& wear = version.fields;
    return {version.key.on,
            wear.value_thousandths,
            wear.unit,
            wear.total,
            version.fact,
            version.standing};
}

void take_points(const std::vector<Version<facts::Wear>>& versions, WearState& wear) {
    const std::optional<Key> floor = floor_of(versions);
    for (const Version<facts::Wear>& version : versions) {
        wear.points.push_back(point_of(version));
        if (!floor || !comes_before(version.key, *floor)) wear.last.push_back(point_of(version));
    }
}

/// A limit of a day to come is not in force yet; one that somebody takes back stands until then.
void take_bounds(const std::vector<Version<facts::WearLimit>>& versions,
                 Date today,
                 WearState& wear) {
    const std::optional<Key> floor = floor_of(versions);
    for (const Version<facts::WearLimit>& version : versions) {
        const bool counts =
            version.key.on <= today && (!floor || !comes_before(version.key, *floor));
        if (counts)
            wear.bounds.push_back({version.key.on, version.fields, version.fact, version.standing});
    }
}

/// How bad a measurement is against a limit: past, then not comparable, then by what is left.
[[nodiscard]] std::tuple<std::int32_t, std::int64_t> badness(const facts::WearLimit& limit,
                                                             const WearPoint& point) {
    const std::int64_t left = wear_left(limit, point.value_thousandths);
    if (limit.unit != point.unit) return {1, 0};
    return {left < 0 ? 2 : 0, -left};
}

[[nodiscard]] WearVerdict verdict_of(const WearBound& bound, const WearPoint& point) {
    if (bound.limit.unit != point.unit) return WearVerdict::other_unit;
    return wear_left(bound.limit, point.value_thousandths) < 0 ? WearVerdict::past
                                                               : WearVerdict::sound;
}

}  // namespace

void fold_wear(const std::vector<Record>& records, Date today, std::vector<ItemState>& items) {
    const Versions<facts::Wear> points = gather<facts::Wear>(records, today);
    const Versions<facts::WearLimit> bounds = gather<facts::WearLimit>(records, today);
    for (ItemState& item : items) {
        const auto measured = points.find(item.id);
        const auto limited = bounds.find(item.id);
        WearState wear;
        if (measured != points.end()) take_points(measured->second, wear);
        if (limited != bounds.end()) take_bounds(limited->second, today, wear);
        if (!wear.points.empty() || !wear.bounds.empty()) item.wear = std::move(wear);
    }
}

WearFinding judge_wear(const WearState& wear) {
    WearFinding out;
    out.disputed = wear.last.size() > 1 || wear.bounds.size() > 1;
    if (!wear.last.empty()) out.point = wear.last.back();
    if (wear.bounds.empty()) return out;
    out.bound = wear.bounds.back();
    if (wear.last.empty()) {
        out.verdict = WearVerdict::unmeasured;
        return out;
    }
    std::optional<std::tuple<std::int32_t, std::int64_t>> worst;
    for (const WearBound& bound : wear.bounds) {
        for (const WearPoint& point : wear.last) {
            const auto bad = badness(bound.limit, point);
            if (worst && bad <= *worst) continue;
            worst = bad;
            out.bound = bound;
            out.point = point;
            out.verdict = verdict_of(bound, point);
        }
    }
    const bool may_be_none =
        std::all_of(wear.last.begin(), wear.last.end(), [](const WearPoint& point) {
            return point.standing == Standing::may_not_be;
        });
    if (may_be_none && out.verdict == WearVerdict::sound) out.verdict = WearVerdict::unmeasured;
    return out;
}

std::int64_t wear_left(const facts::WearLimit& limit, std::int32_t value_thousandths) {
    const std::int64_t over = std::int64_t{value_thousandths} - limit.limit_thousandths;
    return limit.sense == facts::WearSense::at_most ? -over : over;
}

}  // namespace twoclocks::timeline
