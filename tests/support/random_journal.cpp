#include "tests/support/random_journal.hpp"

#include <algorithm>
#include <memory>
#include <utility>

namespace twoclocks::support {
namespace {

using base::Date;
using base::Id;
using facts::Body;
using facts::Fact;
using facts::Fields;

constexpr Date journal_start{18'262};  // 2020-01-01
constexpr std::int32_t span_days = 2000;

/// What the aircraft really had on a day, in tenths: 1,000 h and 0.3 h a day.
[[nodiscard]] std::int64_t true_total(Date on) {
    return 10'000 + 3 * std::int64_t{base::days_between(journal_start, on)};
}

[[nodiscard]] const Body& latest_body(const Fact& fact) {
    const auto* correction = std::get_if<facts::Correction>(&fact.body.fields);
    return correction != nullptr ? *correction->instead : fact.body;
}

[[nodiscard]] bool can_be_corrected(const Fields& fields) {
    return !std::holds_alternative<facts::Withdrawal>(fields) &&
           !std::holds_alternative<facts::Answer>(fields) &&
           !std::holds_alternative<facts::UnknownKind>(fields);
}

}  // namespace

RandomJournal::RandomJournal(std::uint64_t seed, Mix mix) : random_(seed), mix_(mix) {
    for (const char* name : {"ann", "ben", "cay"})
        pens_.emplace_back(name);
    write_base();
    for (std::int32_t left = mix_.steps; left > 0; --left)
        step();
}

facts::Journal RandomJournal::all() const {
    return merge(merge(devices_[0], devices_[1]), devices_[2]);
}

void RandomJournal::write_base() {
    Pen& pen = pens_.front();
    facts::AircraftAdded aircraft;
    aircraft.registration = "ISLE-9";
    if (!random_.once_in(4)) aircraft.manufactured = base::add_days(journal_start, -400);
    std::vector<Fact> facts{pen.add(journal_start, {}, aircraft)};
    aircraft_ = facts.front().id;
    facts.push_back(pen.add(
        journal_start, {aircraft_}, facts::MeterFitted{"First", {}, {}, base::hours(1000), {}}));
    meters_ = {facts.back().id};
    offsets_ = {10'000};
    for (const facts::ItemRole role : {facts::ItemRole::overhaul, facts::ItemRole::inspection}) {
        facts.push_back(pen.add(journal_start, {aircraft_}, facts::ItemAdded{"Item", role, {}}));
        items_.push_back(facts.back().id);
        facts.push_back(pen.write(journal_start, {aircraft_, items_.back()}, random_limit()));
    }
    if (mix_.parts) {
        for (Fact& part : new_parts())
            facts.push_back(std::move(part));
    }
    devices_.fill(journal_of(facts));
}

void RandomJournal::step() {
    const auto device = static_cast<std::size_t>(random_.between(0, 2));
    const auto other = static_cast<std::size_t>(random_.between(0, 2));
    switch (random_.between(0, 9)) {
        case 0:
            devices_[device] = merge(devices_[device], devices_[other]);
            break;
        case 1:
        case 2:
        case 3:
        case 4:
            write_change(device);
            break;
        default:
            write_new(device);
    }
}

void RandomJournal::write_new(std::size_t device) {
    const Date on = random_day();
    Pen& pen = pens_[device];
    const auto meter =
        static_cast<std::size_t>(random_.between(0, static_cast<std::int64_t>(meters_.size()) - 1));
    switch (random_.between(0, mix_.parts ? 15 : 11)) {
        case 0:
            meters_.push_back({});
            offsets_.push_back(true_total(on));
            {
                const facts::MeterFitted fitted{"Next", {}, {}, base::tenths(true_total(on)), {}};
                const Fact fact = pen.add(on, {aircraft_}, fitted);
                meters_.back() = fact.id;
                devices_[device].add(fact);
            }
            break;
        case 1: {
            // Drawn one after the other: arguments are evaluated in another order by each compiler,
            // and a seed must mean the same journal on every build.
            const Id item = items_[static_cast<std::size_t>(random_.between(0, 1))];
            devices_[device].add(pen.write(on, {aircraft_, item}, random_limit()));
            break;
        }
        case 2:
        case 3:
        case 4:
            devices_[device].add(pen.write(on, {aircraft_}, work(on)));
            break;
        case 5:
            devices_[device].add(pen.write(on, {aircraft_}, new_fields(on)));
            break;
        case 12:
        case 13:
        case 14:
        case 15:
            devices_[device].add(part_fact(pen, on));
            break;
        default:
            devices_[device].add(
                pen.write(on, {aircraft_, meters_[meter]}, reading(on, meters_[meter])));
    }
}

void RandomJournal::write_change(std::size_t device) {
    Pen& pen = pens_[device];
    const Fact target = any_fact(device);
    if (!can_be_corrected(target.body.fields)) return;
    const std::int64_t choice = random_.between(0, 9);
    if (choice <= 5) {
        devices_[device].add(pen.correct(target, varied(latest_body(target))));
    } else if (choice <= 7) {
        devices_[device].add(pen.withdraw(target));
    } else if (choice == 8) {
        Fact twin = target;
        if (std::holds_alternative<facts::Correction>(twin.body.fields)) return;
        twin.body = varied(twin.body);
        devices_[device].add(twin);
    } else if (mix_.answers) {
        const facts::Ref kept = ref_to(devices_[device], target);
        const facts::Ref other = ref_to(devices_[device], any_fact(device));
        devices_[device].add(pen.answer(aircraft_, {kept, other}, {kept}));
    }
}

/// One plan in four names a month.
facts::UsagePlanned RandomJournal::planned(std::int64_t tenths) {
    facts::UsagePlanned out{base::tenths(tenths), {}};
    if (tenths % 4 == 0) {
        const auto month = static_cast<std::size_t>(tenths / 4 % 12);
        out.by_month[month] = base::tenths(2 * tenths);
    }
    return out;
}

Fields RandomJournal::new_fields(Date on) {
    switch (random_.between(0, mix_.strangers ? 4 : 2)) {
        case 0:
            return planned(random_.between(0, 400));
        case 1: {
            const auto days = static_cast<std::int32_t>(random_.between(1, 200));
            facts::OutOfService spell;
            if (!random_.once_in(5)) spell.until = base::add_days(on, days);
            return spell;
        }
        case 2:
            return facts::Note{"Washed"};
        case 3:
            return facts::AircraftChanged{"ISLE-8", {}};
        default:
            return facts::UnknownKind{"vibration"};
    }
}

/// The same record as somebody else would have it.
Body RandomJournal::varied(const Body& body) {
    Body out = body;
    if (random_.once_in(3)) out.on = random_day();
    if (vary_part(out)) return out;
    if (auto* reading = std::get_if<facts::Reading>(&out.fields)) {
        *reading = this->reading(out.on, out.about.back());
    } else if (auto* done = std::get_if<facts::WorkDone>(&out.fields)) {
        if (out.about.front() == aircraft_) *done = work(out.on);
    } else if (auto* limit = std::get_if<facts::LimitSet>(&out.fields)) {
        *limit = random_limit();
    } else if (auto* meter = std::get_if<facts::MeterFitted>(&out.fields)) {
        meter->total = meter->total + base::tenths(random_.between(-20, 20));
    } else if (auto* added = std::get_if<facts::AircraftAdded>(&out.fields)) {
        added->manufactured =
            base::add_days(journal_start, -static_cast<std::int32_t>(random_.between(0, 900)));
    } else if (auto* spell = std::get_if<facts::OutOfService>(&out.fields)) {
        spell->until = base::add_days(out.on, static_cast<std::int32_t>(random_.between(1, 300)));
    } else if (auto* plan = std::get_if<facts::UsagePlanned>(&out.fields)) {
        *plan = planned(random_.between(0, 400));
    }
    return out;
}

facts::Reading RandomJournal::reading(Date on, Id meter) {
    const auto found = std::find(meters_.begin(), meters_.end(), meter);
    const std::int64_t offset = offsets_[static_cast<std::size_t>(found - meters_.begin())];
    facts::Reading out = reads(std::max<std::int64_t>(0, true_total(on) - offset + stray()));
    if (random_.once_in(3)) out.landings = base::Count{true_total(on) / 2};
    if (random_.once_in(5)) out.starts = base::Count{true_total(on) / 5};
    return out;
}

facts::WorkDone RandomJournal::work(Date on) {
    const auto item = static_cast<std::size_t>(random_.between(0, 1));
    facts::WorkDone out = renews({items_[item]}, random_.once_in(2) ? -1 : true_total(on));
    if (random_.once_in(2)) out.renews.front().clocks = {facts::Clock::hours};
    if (random_.once_in(4)) out.renews.push_back({items_[1 - item], {facts::Clock::calendar}});
    if (random_.once_in(3)) out.landings = base::Count{true_total(on) / 2};
    return out;
}

facts::LimitSet RandomJournal::random_limit() {
    facts::LimitSet out = limit(random_.between(0, 3) * 700, 0);
    if (!out.hours || random_.once_in(2)) {
        out.months = static_cast<std::int32_t>(random_.between(1, 5) * 12);
    }
    if (random_.once_in(4)) out.landings = base::Count{random_.between(1, 9) * 1000};
    if (random_.once_in(3)) out.rule = base::CalendarRule::month_end;
    out.limit_class = static_cast<facts::LimitClass>(random_.between(0, 3));
    const Date anchor =
        base::add_days(journal_start, -static_cast<std::int32_t>(random_.between(0, 600)));
    if (!random_.once_in(3)) out.anchor_on = anchor;
    if (!random_.once_in(3)) out.anchor_total = base::tenths(random_.between(0, 10'000));
    add_settings(out);
    return out;
}

/// What some limits say beside their interval.
void RandomJournal::add_settings(facts::LimitSet& limit) {
    const auto hours = [&](std::int64_t most) { return base::hours(random_.between(1, most)); };
    const auto small = [&](std::int64_t most) {
        return static_cast<std::int32_t>(random_.between(1, most));
    };
    if (!limit.months && random_.once_in(4)) limit.days = small(900);
    if (random_.once_in(4)) limit.first.hours = hours(2000);
    if (random_.once_in(6)) limit.first.months = small(48);
    limit.once = random_.once_in(8);
    if (random_.once_in(3)) limit.combine = facts::Combine::later;
    if (random_.once_in(4)) limit.cap.hours = hours(3000);
    if (random_.once_in(6)) limit.cap.days = small(2000);
    if (limit.limit_class == facts::LimitClass::airworthiness_limitation) return;
    limit.tolerance.source = "Programme";
    if (random_.once_in(3)) limit.tolerance.hours = hours(60);
    if (random_.once_in(3)) limit.tolerance.days = small(60);
    if (random_.once_in(3)) limit.tolerance.permille = small(200);
    if (limit.tolerance.permille && random_.once_in(2)) limit.tolerance.cap_hours = hours(50);
    if (random_.once_in(2)) limit.tolerance.carry_over = facts::CarryOver::from_due;
    const bool programme = limit.limit_class == facts::LimitClass::programme;
    if (programme && random_.once_in(2)) limit.tolerance.overfly_hours = hours(40);
}

Date RandomJournal::random_day() {
    return base::add_days(journal_start, static_cast<std::int32_t>(random_.between(0, span_days)));
}

const Fact& RandomJournal::any_fact(std::size_t device) {
    const auto& facts = devices_[device].facts();
    const auto last = static_cast<std::int64_t>(facts.size()) - 1;
    // Names that disagree hide every figure: rarely, and only where they are wanted.
    const std::int64_t first =
        mix_.strangers && random_.once_in(8) ? 0 : std::min<std::int64_t>(6, last);
    return facts[static_cast<std::size_t>(random_.between(first, last))];
}

std::int64_t RandomJournal::stray() {
    if (!mix_.stray_totals || !random_.once_in(5)) return 0;
    return random_.between(-3000, 3000);
}

facts::Journal shuffled(const facts::Journal& journal, std::uint64_t seed) {
    Random random{seed};
    std::vector<const facts::Fact*> order = journal.in_order();
    for (std::size_t left = order.size(); left > 1; --left) {
        const auto pick =
            static_cast<std::size_t>(random.between(0, static_cast<std::int64_t>(left) - 1));
        std::swap(order[left - 1], order[pick]);
    }
    facts::Journal out;
    for (const facts::Fact* fact : order)
        out.add(*fact);
    return out;
}

}  // namespace twoclocks::support
