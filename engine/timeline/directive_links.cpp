#include "engine/timeline/directive_links.hpp"

#include <algorithm>

#include "engine/timeline/directive_credit.hpp"
#include "engine/timeline/directives.hpp"

namespace twoclocks::timeline {
namespace {

using base::Date;
using base::Id;
using facts::Directive;

using Ids = std::vector<Id> Directive::*;

[[nodiscard]] bool has(const std::vector<Id>& ids, Id id) {
    return std::find(ids.begin(), ids.end(), id) != ids.end();
}

[[nodiscard]] bool any_version(const AllTold<Directive>& told, Ids list, Id id) {
    return std::any_of(told.versions.begin(), told.versions.end(), [&](const auto& version) {
        return has(version.fields.*list, id);
    });
}

[[nodiscard]] bool every_version(const AllTold<Directive>& told, Ids list, Id id) {
    return !told.may_be_none &&
           std::all_of(told.versions.begin(), told.versions.end(), [&](const auto& version) {
               return has(version.fields.*list, id);
           });
}

/// True when a directive says, by way of any others, that it replaces an item.
[[nodiscard]] bool reaches(const Directives& all, std::size_t from, Id item) {
    std::vector<std::size_t> left{from};
    std::vector<bool> seen(all.items.size(), false);
    while (!left.empty()) {
        const std::size_t one = left.back();
        left.pop_back();
        if (seen[one]) continue;
        seen[one] = true;
        if (any_version(all.told[one], &Directive::replaces, item)) return true;
        for (std::size_t next = 0; next < all.items.size(); ++next) {
            if (any_version(all.told[one], &Directive::replaces, all.items[next].id))
                left.push_back(next);
        }
    }
    return false;
}

void supersede(const Directives& all, std::size_t place) {
    ItemState& item = all.items[place];
    DirectiveState& directive = *item.directive;
    directive.in_ring = reaches(all, place, item.id);
    for (std::size_t other = 0; other < all.items.size(); ++other) {
        if (!any_version(all.told[other], &Directive::replaces, item.id)) continue;
        const ItemState& by = all.items[other];
        const OtherDirective named{by.id, name_of_directive(by)};
        const bool is_ring = by.id == item.id || reaches(all, place, by.id);
        const bool ends = by.directive->sure && !is_ring &&
                          every_version(all.told[other], &Directive::replaces, item.id);
        if (!ends) {
            directive.claimed_by.push_back(named);
        } else if (!directive.superseded_by) {
            directive.superseded_by = named;
        }
    }
}

/// The record of a work, as it is in use; empty when it is gone from view.
[[nodiscard]] DirectiveWork work_of(const std::vector<Record>& records, const Renewed& renewed) {
    DirectiveWork out{renewed.on, renewed.total, renewed.total_estimated, {}, {}, renewed.fact};
    for (const Record& record : records) {
        if (record.root != renewed.fact || record.withdrawn) continue;
        const auto* work = std::get_if<facts::WorkDone>(&record.in_use.fields);
        if (work == nullptr) continue;
        out.what = work->what;
        out.reference = work->reference;
    }
    return out;
}

[[nodiscard]] const Renewed* latest(const Works& works) {
    const Renewed* out = nullptr;
    for (const std::vector<Renewed>& clock : works) {
        if (!clock.empty() && (out == nullptr || clock.back().on > out->on)) out = &clock.back();
    }
    return out;
}

/// Work on the whole of an item that every version names as terminating action.
void end_by_work(const Recorded& recorded, const Directives& all, std::size_t place) {
    DirectiveState& directive = *all.items[place].directive;
    for (const ItemState& item : all.items) {
        if (!any_version(all.told[place], &Directive::ended_by, item.id)) continue;
        const bool every = every_version(all.told[place], &Directive::ended_by, item.id);
        if (item.work_disputed || !every) {
            directive.end_disputed =
                directive.end_disputed || item.work_disputed || is_wholly_renewed(item);
            continue;
        }
        if (!is_wholly_renewed(item) || directive.ended_by) continue;
        const Renewed* last = nullptr;
        for (const std::optional<Renewed>& renewed : item.renewed) {
            if (renewed && (last == nullptr || renewed->on > last->on)) last = &*renewed;
        }
        if (last != nullptr) directive.ended_by = work_of(recorded.records, *last);
    }
}

}  // namespace

bool is_named(Id item, const Directives& all) {
    return std::any_of(all.told.begin(), all.told.end(), [&](const auto& told) {
        return any_version(told, &Directive::replaces, item);
    });
}

bool names_elsewhere(Id item, const Directives& all) {
    const auto is_here = [&](Id id) {
        return std::any_of(
            all.items.begin(), all.items.end(), [&](const ItemState& one) { return one.id == id; });
    };
    for (std::size_t place = 0; place < all.items.size(); ++place) {
        if (all.items[place].id != item) continue;
        for (const auto& version : all.told[place].versions) {
            for (const Ids list : {&Directive::replaces, &Directive::ended_by}) {
                const std::vector<Id>& ids = version.fields.*list;
                if (!std::all_of(ids.begin(), ids.end(), is_here)) return true;
            }
        }
    }
    return false;
}

std::string name_of_directive(const ItemState& item) {
    const bool named = item.directive && !item.directive->directive.number.empty();
    return named ? item.directive->directive.number : item.name;
}

void link(const Recorded& recorded, Directives& all) {
    for (std::size_t place = 0; place < all.items.size(); ++place) {
        if (all.items[place].directive) supersede(all, place);
    }
    for (std::size_t place = 0; place < all.items.size(); ++place) {
        if (!all.items[place].directive) continue;
        credit(recorded, all, place);
        end_by_work(recorded, all, place);
        DirectiveState& directive = *all.items[place].directive;
        const Renewed* last = latest(directive.histories.front());
        if (last != nullptr) directive.last = work_of(recorded.records, *last);
    }
}

}  // namespace twoclocks::timeline
