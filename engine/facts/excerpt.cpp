#include "engine/facts/excerpt.hpp"

#include <algorithm>
#include <set>
#include <type_traits>
#include <utility>

#include "engine/facts/field_visitor.hpp"
#include "engine/facts/fields.hpp"
#include "engine/facts/related.hpp"

namespace twoclocks::facts {
namespace {

/// Kinds that are about nothing but money, whatever they say.
template <class Kind>
constexpr bool money_kind = std::is_same_v<Kind, PlanCosts> || std::is_same_v<Kind, CostLine> ||
                            std::is_same_v<Kind, PriceList> || std::is_same_v<Kind, ExchangeRate> ||
                            std::is_same_v<Kind, CostTerms> || std::is_same_v<Kind, Core> ||
                            std::is_same_v<Kind, CoreStep> || std::is_same_v<Kind, PayTerm> ||
                            std::is_same_v<Kind, Payment> || std::is_same_v<Kind, Balance> ||
                            std::is_same_v<Kind, ReserveTerms> || std::is_same_v<Kind, Holder> ||
                            std::is_same_v<Kind, ItemPrice> || std::is_same_v<Kind, ClosingPoint>;

/// Any amount in a record.
class Amounts : public FieldTeller {
  public:
    [[nodiscard]] bool are_in(const Fields& fields) {
        visit_fields(*this, fields);
        return found_;
    }

    void money(std::string_view, const std::optional<base::Money>& amount) override {
        found_ = found_ || amount.has_value();
    }

  private:
    bool found_{false};
};

/// Ids of the records that one corrects, takes back or settles.
[[nodiscard]] std::vector<base::Id> named_by(const Fields& fields) {
    if (const auto* correction = std::get_if<Correction>(&fields)) return {correction->replaces.id};
    if (const auto* withdrawal = std::get_if<Withdrawal>(&fields))
        return {withdrawal->withdraws.id};
    std::vector<base::Id> out;
    if (const auto* answer = std::get_if<Answer>(&fields))
        for (const auto* refs : {&answer->settles, &answer->keeps})
            for (const Ref& ref : *refs)
                out.push_back(ref.id);
    return out;
}

/// Where a record stands in the place of another, or takes it back: the ones it names.
[[nodiscard]] std::vector<base::Id> replaced_by(const Fields& fields) {
    return std::holds_alternative<Answer>(fields) ? std::vector<base::Id>{} : named_by(fields);
}

/// These, whatever corrects, takes back or settles one of them, and what they correct or take back.
[[nodiscard]] std::set<base::Id> with_chains(const Journal& journal, std::vector<base::Id> open) {
    std::set<base::Id> out{open.begin(), open.end()};
    const auto add = [&](base::Id id) {
        if (out.insert(id).second) open.push_back(id);
    };
    while (!open.empty()) {
        const base::Id id = open.back();
        open.pop_back();
        for (const Fact* fact : journal.naming(id))
            add(fact->id);
        for (const Fact* fact : journal.with_id(id))
            for (const base::Id& replaced : replaced_by(fact->body.fields))
                add(replaced);
    }
    return out;
}

/// Any field of a renewal that this version does not know.
class NewerRenewals : public FieldTeller {
  public:
    [[nodiscard]] bool are_in(const Fields& fields) {
        visit_fields(*this, fields);
        return found_;
    }

    void renewals(std::string_view, const std::vector<Renewal>& renewals) override {
        for (const Renewal& renewal : renewals)
            found_ = found_ || !renewal.extra.empty();
    }

  private:
    bool found_{false};
};

/// Nobody can see what a newer version says in it.
[[nodiscard]] bool is_newer(const Body& body) {
    if (std::holds_alternative<UnknownKind>(body.fields) || !body.extra.empty()) return true;
    if (NewerRenewals{}.are_in(body.fields)) return true;
    const auto* correction = std::get_if<Correction>(&body.fields);
    return correction != nullptr && correction->instead && is_newer(*correction->instead);
}

/// What hours of a part need of another aircraft that it flew on, or of a part that it was in.
[[nodiscard]] bool is_of_hours(const Body& body) {
    if (const auto* correction = std::get_if<Correction>(&body.fields))
        return correction->instead && is_of_hours(*correction->instead);
    const Fields& fields = body.fields;
    return std::holds_alternative<AircraftAdded>(fields) ||
           std::holds_alternative<AircraftChanged>(fields) ||
           std::holds_alternative<MeterFitted>(fields) ||
           std::holds_alternative<MeterAdjusted>(fields) ||
           std::holds_alternative<Reading>(fields) || std::holds_alternative<HoursFactor>(fields) ||
           std::holds_alternative<FlownAs>(fields) || std::holds_alternative<PartAdded>(fields) ||
           std::holds_alternative<PartFitted>(fields) ||
           std::holds_alternative<PartRemoved>(fields) ||
           std::holds_alternative<PartRebuilt>(fields);
}

/// Parts about an aircraft.
struct PartsOf {
    std::set<base::Id> own;    // that are or were on it, by way of any others; and itself
    std::set<base::Id> lends;  // that those were in elsewhere: their hours are needed
};

[[nodiscard]] PartsOf parts_of(const Journal& journal, base::Id aircraft) {
    std::vector<std::pair<base::Id, base::Id>> fits;  // part, host
    const auto look = [&](const Body& body) {
        if (std::holds_alternative<PartFitted>(body.fields) && body.about.size() > 1)
            fits.emplace_back(body.about[0], body.about[1]);
    };
    for (const Fact& fact : journal.facts()) {
        look(fact.body);
        const auto* correction = std::get_if<Correction>(&fact.body.fields);
        if (correction != nullptr && correction->instead) look(*correction->instead);
    }
    PartsOf out;
    out.own.insert(aircraft);
    for (bool more = true; more;) {
        more = false;
        for (const auto& [part, host] : fits)
            if (out.own.count(host) > 0) more = out.own.insert(part).second || more;
    }
    for (bool more = true; more;) {
        more = false;
        for (const auto& [part, host] : fits) {
            const bool is_needed = out.own.count(part) > 0 || out.lends.count(part) > 0;
            if (is_needed && out.own.count(host) == 0) more = out.lends.insert(host).second || more;
        }
    }
    return out;
}

/// A record without what corrects it, as one of an aircraft and its parts or of somebody else.
class Belonging {
  public:
    Belonging(const Journal& journal, base::Id aircraft) : parts_(parts_of(journal, aircraft)) {
        for (const base::Id& id : journal.aircraft())
            others_.insert(id);
        others_.erase(aircraft);
        for (const base::Id& id : journal.parts())
            if (parts_.own.count(id) == 0 && parts_.lends.count(id) == 0) strange_.insert(id);
    }

    [[nodiscard]] bool holds(const Fact& fact) const {
        std::vector<base::Id> named = fact.body.about;
        named.push_back(fact.id);
        const auto names = [&](const std::set<base::Id>& ids) {
            return std::any_of(
                named.begin(), named.end(), [&](base::Id id) { return ids.count(id) > 0; });
        };
        if (names(parts_.own)) return true;
        if (names(strange_)) return false;
        return is_of_hours(fact.body) || (!names(others_) && !names(parts_.lends));
    }

  private:
    PartsOf parts_;
    std::set<base::Id> others_;
    std::set<base::Id> strange_;
};

/// What is of an aircraft, of all that may bear on it; what corrects, takes back or settles a
/// record goes where that does.
[[nodiscard]] Journal of_aircraft(const Journal& whole, base::Id aircraft) {
    const Belonging belonging{whole, aircraft};
    std::set<base::Id> kept;
    std::vector<const Fact*> open;
    for (const Fact& fact : whole.facts()) {
        if (!named_by(fact.body.fields).empty())
            open.push_back(&fact);
        else if (belonging.holds(fact))
            kept.insert(fact.id);
    }
    const auto goes = [&](const Fact* fact) {
        for (const base::Id& id : named_by(fact->body.fields))
            if (kept.count(id) > 0) return kept.insert(fact->id).second || true;
        return false;
    };
    while (std::erase_if(open, goes) > 0) {
    }
    Journal out;
    for (const Fact& fact : whole.facts())
        if (kept.count(fact.id) > 0) out.add(fact);
    return out;
}

}  // namespace

bool is_of_money(const Body& body) {
    if (const auto* correction = std::get_if<Correction>(&body.fields))
        return correction->instead && is_of_money(*correction->instead);
    const bool is_money_kind = std::visit(
        [](const auto& fields) { return money_kind<std::decay_t<decltype(fields)>>; }, body.fields);
    return is_money_kind || Amounts{}.are_in(body.fields);
}

Excerpt excerpt_of(const Journal& journal, const ExcerptAsked& asked) {
    const Journal whole = asked.aircraft
                              ? of_aircraft(related_to(journal, *asked.aircraft), *asked.aircraft)
                              : journal;
    const bool is_part = !asked.has_money || !asked.has_names;
    Excerpt out;
    std::vector<base::Id> without;
    for (const Fact& fact : whole.facts()) {
        const bool is_left = is_part && is_newer(fact.body);
        if (is_left) ++out.newer_left;
        if (is_left || (!asked.has_money && is_of_money(fact.body))) without.push_back(fact.id);
    }
    const std::set<base::Id> left = with_chains(whole, std::move(without));
    for (const Fact& fact : whole.facts()) {
        if (left.count(fact.id) > 0) continue;
        Fact copy = fact;
        const bool is_shared = whole.id_is_shared(fact.id);
        if (!asked.has_names && is_shared && !fact.by.empty()) ++out.kept_names;
        if (!asked.has_names && !is_shared) copy.by.clear();
        out.journal.add(std::move(copy));
    }
    return out;
}

}  // namespace twoclocks::facts
