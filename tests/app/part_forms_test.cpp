// What is entered of parts becomes facts, and nonsense becomes a problem beside its field.
#include "tests/app/parts_hangar.hpp"

namespace {

using namespace twoclocks;
using namespace twoclocks::canvas;
using canvas::support::PartsHangar;
using facts::Fact;
using twoclocks::support::day;
using Lines = std::vector<std::string>;
using Ids = std::vector<base::Id>;

template <class Kind>
const Kind& as(const Fact& fact) {
    const auto* fields = std::get_if<Kind>(&fact.body.fields);
    REQUIRE(fields != nullptr);
    return *fields;
}

}  // namespace

TEST_CASE("a part joins the record and is fitted at once", "[app][parts]") {
    PartsHangar h;
    h.enter(FormKind::new_part,
            h.first.id,
            {{"name", "Belt"},
             {"part_number", "B-2"},
             {"serial", "44"},
             {"tsn", "10.5"},
             {"history_unknown", "yes"},
             {"condition", "inspected"},
             {"position", "aft"}});
    const std::vector<Fact> saved = h.saved();
    REQUIRE(saved.size() == 2);
    const auto& added = as<facts::PartAdded>(saved[0]);
    CHECK(added.name == "Belt");
    CHECK(added.serial == "44");
    CHECK(added.tsn == base::tenths(105));
    CHECK_FALSE(added.tso);
    CHECK(added.history_unknown);
    CHECK(added.condition == facts::PartCondition::inspected);
    CHECK(saved[0].body.about == Ids{saved[0].id});
    CHECK(saved[1].body.about == Ids{saved[0].id, h.first.id});
    CHECK(as<facts::PartFitted>(saved[1]).position == "aft");
    CHECK(as<facts::PartFitted>(saved[1]).host_total == base::hours(1050));
    const auto& page = h.part_page(saved[0].id);
    CHECK(base::say(page.view.where, {}) == "Fitted to TEST-1: aft");
}

TEST_CASE("a part that is fitted to nothing lies on the shelf", "[app][parts]") {
    PartsHangar h;
    h.enter(FormKind::new_part,
            h.first.id,
            {{"part_number", "B-2"}, {"serial", "44"}, {"host", "nothing"}});
    const std::vector<Fact> saved = h.saved();
    REQUIRE(saved.size() == 1);
    CHECK_FALSE(as<facts::PartAdded>(saved[0]).tsn);
    CHECK(base::say(h.part_page(saved[0].id).view.hours_new.text, {}) == "unknown");
}

TEST_CASE("papers that cannot be right are refused beside the figure", "[app][parts]") {
    PartsHangar h;
    h.enter(FormKind::new_part, h.first.id, {{"tsn", "10"}, {"tso", "11"}});
    CHECK(h.problems() ==
          Lines{"part_number form_needed", "serial form_needed", "tso form_tso_above_tsn"});
    h.put("part_number", "GB-1");
    h.put("serial", "7");
    h.put("tso", "10");
    h.put("date", "2026-11-26");
    h.put("manufactured", "2026-11-26");
    h.app.apply(intent::SubmitForm{});
    CHECK(h.problems() ==
          Lines{"date form_day_ahead", "serial form_part_twice", "manufactured form_day_ahead"});
    h.put("serial", "8");
    h.put("date", "2026-11-24");
    h.put("manufactured", "2026-11-25");
    h.app.apply(intent::SubmitForm{});
    CHECK(h.problems() == Lines{"date part_before_made"});
    h.put("manufactured", "2026-11-24");
    h.put("host_total", "1049.9");
    h.app.apply(intent::SubmitForm{});
    CHECK(h.problems() == Lines{"host_total entry_total_falls"});
    CHECK(h.host.asked.empty());
    h.put("host_total", "1050");
    h.app.apply(intent::SubmitForm{});
    CHECK(h.saved().size() == 2);
}

TEST_CASE("a fit names the part, its host and the hours of that", "[app][parts]") {
    PartsHangar h;
    h.enter(FormKind::part_fit, h.gearbox.id, {{"host", "TEST-2"}, {"position", "main"}});
    const std::vector<Fact> saved = h.saved();
    REQUIRE(saved.size() == 1);
    CHECK(saved[0].body.about == Ids{h.gearbox.id, h.second.id});
    CHECK(as<facts::PartFitted>(saved[0]).host_total == base::hours(500));
    CHECK(h.state(h.gearbox.id).aircraft == h.second.id);
}

TEST_CASE("the hours of the host follow the host and the day, and never overwrite typing by a day",
          "[app][parts]") {
    PartsHangar h;
    h.app.apply(intent::OpenForm{FormKind::part_fit, h.gearbox.id});
    CHECK(h.options("host") == Lines{"nothing", "TEST-1", "TEST-2"});
    CHECK(h.form_field("host_total").text.empty());
    h.put("host", "TEST-1");
    CHECK(h.form_field("host_total").text == "1050.0");
    h.put("date", "2026-11-10");  // flown since the reading before it, nobody recorded how much
    CHECK(h.form_field("host_total").text.empty());
    h.put("date", "2026-11-01");
    CHECK(h.form_field("host_total").text == "1000.0");
    h.put("host", "TEST-2");
    CHECK(h.form_field("host_total").text == "500.0");
    h.put("host_total", "512");
    h.put("date", "2026-11-20");
    CHECK(h.form_field("host_total").text == "512");
    h.put("host", "TEST-1");
    CHECK(h.form_field("host_total").text == "1050.0");
}

TEST_CASE("a part is never offered itself, what is in it, or what is scrapped", "[app][parts]") {
    PartsHangar h;
    const Fact bearing = h.ann.add(day("2026-11-01"), {}, PartsHangar::plate("8"));
    const Fact race = h.ann.add(day("2026-11-01"), {}, PartsHangar::plate("9"));
    const Fact scrap = h.ann.add(day("2026-11-01"), {}, PartsHangar::plate("10"));
    h.join({bearing,
            race,
            scrap,
            h.ann.write(day("2026-11-02"), {bearing.id, h.gearbox.id}, facts::PartFitted{}),
            h.ann.write(day("2026-11-02"), {race.id, bearing.id}, facts::PartFitted{}),
            h.ann.write(day("2026-11-02"), {scrap.id}, facts::PartScrapped{"Cut"})});
    h.app.apply(intent::OpenForm{FormKind::part_fit, h.gearbox.id});
    CHECK(h.options("host") == Lines{"nothing", "TEST-1", "TEST-2"});
    h.app.apply(intent::OpenForm{FormKind::part_fit, race.id});
    CHECK(h.options("host") == Lines{"nothing", "TEST-1", "TEST-2", "Gearbox 7", "Gearbox 8"});
}

TEST_CASE("a fit to nothing, or whose hours or day cannot be, is refused", "[app][parts]") {
    PartsHangar h;
    h.enter(FormKind::part_fit, h.gearbox.id, {{"position", "main"}});
    CHECK(h.problems() == Lines{"host form_needed"});
    h.enter(FormKind::part_fit,
            h.gearbox.id,
            {{"date", "2026-11-26"}, {"host", "TEST-1"}, {"host_total", "1049"}});
    CHECK(h.problems() == Lines{"date form_day_ahead"});
    h.put("date", "2026-11-25");
    h.app.apply(intent::SubmitForm{});
    CHECK(h.problems() == Lines{"host_total entry_total_falls"});
    h.put("host_total", "1050");
    h.put("tsn", "299.9");
    h.app.apply(intent::SubmitForm{});
    CHECK(h.problems() == Lines{"tsn form_tsn_falls"});
    h.put("tsn", "300");
    h.app.apply(intent::SubmitForm{});
    CHECK(h.saved().size() == 1);
}

TEST_CASE("a removal ends the spell with the hours of the host", "[app][parts]") {
    PartsHangar h;
    h.enter(FormKind::part_fit,
            h.gearbox.id,
            {{"date", "2026-11-01"}, {"host", "TEST-1"}, {"position", "main"}});
    CHECK(h.saved().size() == 1);
    h.enter(FormKind::part_remove,
            h.gearbox.id,
            {{"temporarily", "yes"}, {"condition", "inspected"}, {"why", "To reach a seal"}});
    const std::vector<Fact> saved = h.saved();
    REQUIRE(saved.size() == 1);
    CHECK(saved[0].body.about == Ids{h.gearbox.id, h.first.id});
    const auto& removed = as<facts::PartRemoved>(saved[0]);
    CHECK(removed.host_total == base::hours(1050));
    CHECK(removed.temporarily);
    CHECK(removed.condition == facts::PartCondition::inspected);
    CHECK(h.state(h.gearbox.id).tsn == base::hours(350));
    // What was taken off for a time goes back where it was.
    h.app.apply(intent::OpenForm{FormKind::part_fit, h.gearbox.id});
    CHECK(h.options("host")[static_cast<std::size_t>(h.form_field("host").chosen)] == "TEST-1");
    CHECK(h.form_field("position").text == "main");
}

TEST_CASE("a removal before the fit or below its hours is refused", "[app][parts]") {
    PartsHangar h;
    h.enter(FormKind::part_fit, h.gearbox.id, {{"date", "2026-11-20"}, {"host", "TEST-1"}});
    CHECK(h.saved().size() == 1);
    h.enter(FormKind::part_remove, h.gearbox.id, {{"date", "2026-11-19"}, {"host_total", "1049"}});
    CHECK(h.problems() == Lines{"date form_before_fit", "host_total form_host_falls"});
    h.put("date", "2026-11-20");
    h.app.apply(intent::SubmitForm{});
    CHECK(h.problems() == Lines{"host_total form_host_falls"});
    CHECK(h.host.asked.empty());
}

TEST_CASE("a part is moved, lent with a day to come back, and comes back", "[app][parts]") {
    PartsHangar h;
    h.enter(FormKind::part_move, h.gearbox.id, {{"why", "Tidying"}});
    CHECK(h.problems() == Lines{"place form_no_move"});
    h.put("lent_to", "Ben");
    h.put("owner", "Ann");
    h.put("return_by", "2026-11-24");
    h.app.apply(intent::SubmitForm{});
    CHECK(h.problems() == Lines{"return_by form_ends_before_start"});
    h.put("return_by", "2027-01-31");
    h.app.apply(intent::SubmitForm{});
    const std::vector<Fact> saved = h.saved();
    REQUIRE(saved.size() == 1);
    CHECK(saved[0].body.about == Ids{h.gearbox.id});
    const PartPage& lent = h.part_page(h.gearbox.id);
    CHECK(base::say(lent.view.where, {}) == "Lent to Ben");
    CHECK(base::say(lent.view.owner, {}) == "Ann");
    CHECK(base::say(lent.view.returns, {}) == "31 Jan 2027");
    h.enter(FormKind::part_move, h.gearbox.id, {{"place", "Shelf 3"}});
    CHECK(h.saved().size() == 1);
    const PartPage& back = h.part_page(h.gearbox.id);
    CHECK(base::say(back.view.where, {}) == "On the shelf: Shelf 3");
    CHECK(base::say(back.view.returns, {}).empty());
}

TEST_CASE("a part is scrapped with a proof, and never without", "[app][parts]") {
    PartsHangar h;
    h.enter(FormKind::part_scrap, h.gearbox.id, {});
    CHECK(h.problems() == Lines{"proof form_needed"});
    h.put("proof", "Cut in two, seen by Ann");
    h.app.apply(intent::SubmitForm{});
    CHECK(as<facts::PartScrapped>(h.saved().at(0)).proof == "Cut in two, seen by Ann");
    CHECK(h.part_page(h.gearbox.id).offered.empty());
}

TEST_CASE("an overhaul renews the part and other work does not", "[app][parts]") {
    PartsHangar h;
    h.enter(FormKind::part_fit, h.gearbox.id, {{"date", "2026-11-01"}, {"host", "TEST-1"}});
    CHECK(h.saved().size() == 1);
    h.enter(FormKind::part_work, h.gearbox.id, {{"what", "Seal"}, {"kind", "other work"}});
    const Fact other = h.saved().at(0);
    CHECK(as<facts::WorkDone>(other).renews.empty());
    CHECK(other.body.about == Ids{h.first.id, h.gearbox.id});
    CHECK(h.state(h.gearbox.id).tso == base::hours(150));
    h.enter(FormKind::part_work, h.gearbox.id, {{"what", "Overhaul"}});
    const Fact work = h.saved().at(0);
    REQUIRE(as<facts::WorkDone>(work).renews.size() == 1);
    CHECK(as<facts::WorkDone>(work).renews[0].item == h.gearbox.id);
    CHECK(as<facts::WorkDone>(work).total == base::hours(1050));
    const timeline::PartState state = h.state(h.gearbox.id);
    CHECK(state.tso == base::FlightTime{0});
    CHECK(state.tsn == base::hours(350));
    CHECK_FALSE(state.tso_estimated);
    CHECK(state.overhauls_recorded == 1);
}

TEST_CASE("work on a part that is on nothing asks for no hours of a host", "[app][parts]") {
    PartsHangar h;
    h.enter(FormKind::part_work, h.gearbox.id, {{"what", "Overhaul"}});
    const auto& fields = h.form().fields;
    CHECK(std::none_of(fields.begin(), fields.end(), [](const FieldView& field) {
        return field.id == "host_total";
    }));
    CHECK(h.saved().at(0).body.about == Ids{h.gearbox.id});
    CHECK(h.state(h.gearbox.id).tso == base::FlightTime{0});
}

TEST_CASE("only the maker's document sets time since new to zero", "[app][parts]") {
    PartsHangar h;
    h.enter(FormKind::part_rebuild, h.gearbox.id, {{"done_by", "The maker"}});
    CHECK(h.problems() == Lines{"document form_needed"});
    h.put("document", "Z-1");
    h.app.apply(intent::SubmitForm{});
    CHECK(as<facts::PartRebuilt>(h.saved().at(0)).document == "Z-1");
    CHECK(h.state(h.gearbox.id).tsn == base::FlightTime{0});
}

TEST_CASE("unknown history and a removal for a time can be corrected", "[app][parts]") {
    PartsHangar h;
    h.enter(FormKind::correct,
            h.gearbox.id,
            {{"history_unknown", "yes"}, {"why", "No papers before 2020"}});
    CHECK(h.saved().size() == 1);
    CHECK(h.state(h.gearbox.id).history_unknown);
}
