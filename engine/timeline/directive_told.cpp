#include "engine/timeline/directive_told.hpp"

#include <algorithm>

namespace twoclocks::timeline {
namespace {

using base::Date;
using base::Id;

/// What a version says of an item by a day, null when it is of another kind, item or time.
template <class Kind>
[[nodiscard]] const Kind* kind_of(const facts::Body* body, Id bearer, Id item, Date today) {
    if (body == nullptr || body->about.size() < 2 || body->on > today) return nullptr;
    if (body->about.front() != bearer || body->about[1] != item) return nullptr;
    return std::get_if<Kind>(&body->fields);
}

/// Another way that is approved on a day; one whose last day has passed holds no more.
[[nodiscard]] bool holds(const facts::AlternativeMeans& means, Date today) {
    return !means.until || today <= *means.until;
}

}  // namespace

std::optional<base::FlightTime> hours_by(const UsageSeries& series, Date on) {
    std::optional<base::FlightTime> out;
    for (const UsagePoint& point : series) {
        if (point.on > on) break;
        out = point.total;
        if (point.on == on) break;
    }
    return out;
}

AllTold<facts::Directive> told_directive(const std::vector<Record>& records,
                                         Id bearer,
                                         Id item,
                                         Date today) {
    AllTold<facts::Directive> out;
    std::optional<Date> last;
    for (const Record& record : records) {
        const bool settled = !record.open && !record.withdrawn;
        if (settled && kind_of<facts::Directive>(&record.in_use, bearer, item, today) != nullptr)
            last = std::max(last.value_or(record.in_use.on), record.in_use.on);
    }
    for (const Record& record : records) {
        if (record.heads.empty() || (last && latest_day(record) < *last)) continue;
        bool in_all = true;
        for (const Head& head : record.heads) {
            const auto* fields = kind_of<facts::Directive>(head.body, bearer, item, today);
            in_all = in_all && fields != nullptr;
            if (fields == nullptr) continue;
            out.versions.push_back({*fields, head.body->on, record.root});
            out.disputed = out.disputed || record.open;
            if (!record.open) break;  // heads that say the same
        }
        if (in_all) out.may_be_none = false;
    }
    if (out.versions.empty()) out.may_be_none = true;
    out.disputed = out.disputed || out.versions.size() > 1;
    return out;
}

void tell_means(
    const std::vector<Record>& records, Id bearer, Id item, Date today, DirectiveState& directive) {
    std::optional<MeansState> settled;
    std::optional<MeansState> over;
    const auto take_last = [](std::optional<MeansState>& last, const MeansState& one) {
        if (!last || last->on <= one.on) last = one;
    };
    for (const Record& record : records) {
        for (const Head& head : record.heads) {
            const auto* means = kind_of<facts::AlternativeMeans>(head.body, bearer, item, today);
            if (means == nullptr) continue;
            const MeansState one{*means, head.body->on, record.root};
            if (record.open) {
                directive.means_in_doubt = true;
                if (holds(*means, today)) directive.means.push_back(one);
                continue;
            }
            take_last(holds(*means, today) ? settled : over, one);
        }
    }
    if (settled) directive.means.push_back(*settled);
    if (directive.means.empty() && !directive.means_in_doubt) directive.means_over = over;
}

}  // namespace twoclocks::timeline
