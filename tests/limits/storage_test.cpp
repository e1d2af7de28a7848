// Limits that count in storage, on return from it, or always.
#include "tests/support/stored.hpp"

using namespace twoclocks;
using facts::InForce;
using support::day;
using support::Stored;

TEST_CASE("a check in storage counts from the day storage began, and then from its work",
          "[limits][storage]") {
    Stored s;
    const facts::Fact turned = s.item(InForce::in_storage, 14);
    CHECK(s.ends(turned) == "asleep");
    s.work(turned, "2024-05-31");
    s.stored("2024-06-10");
    for (const auto& [on, ends] : {std::pair{"2024-06-09", "asleep"},
                                   std::pair{"2024-06-10", "2024-06-24"},
                                   std::pair{"2024-07-01", "2024-06-24"}}) {
        CAPTURE(on);
        CHECK(s.ends(turned, on) == ends);
    }
    s.work(turned, "2024-06-10");
    CHECK(s.ends(turned) == "2024-06-24");
    s.work(turned, "2024-06-20");
    CHECK(s.ends(turned) == "2024-07-04");
    CHECK(s.due(turned).is_stored);
}

TEST_CASE("after storage its checks ask for nothing, and the next storage starts anew",
          "[limits][storage]") {
    Stored s;
    const facts::Fact turned = s.item(InForce::in_storage, 14);
    s.stored("2024-02-01", "2024-02-20");
    s.work(turned, "2024-02-10");
    CHECK(s.ends(turned, "2024-02-19") == "2024-02-24");
    CHECK(s.ends(turned, "2024-02-20") == "asleep");
    s.stored("2024-06-25");
    CHECK(s.ends(turned, "2024-06-24") == "asleep");
    CHECK(s.ends(turned) == "2024-07-09");
}

TEST_CASE("storages that touch are one, a day between makes two", "[limits][storage]") {
    for (const auto& [second, ends] :
         {std::pair{"2024-06-20", "2024-06-24"}, std::pair{"2024-06-21", "2024-07-05"}}) {
        CAPTURE(second);
        Stored s;
        const facts::Fact turned = s.item(InForce::in_storage, 14);
        s.stored("2024-06-10", "2024-06-20");
        s.stored(second);
        CHECK(s.ends(turned) == ends);
    }
}

TEST_CASE("a check on return is due after each storage until it is done", "[limits][storage]") {
    Stored s;
    const facts::Fact back = s.item(InForce::on_return, 30);
    CHECK(s.ends(back) == "asleep");
    s.stored("2024-03-10", "2024-05-10");
    CHECK(s.ends(back, "2024-03-09") == "asleep");
    CHECK(s.ends(back, "2024-03-10") == "2024-03-10");
    CHECK(s.ends(back, "2024-05-09") == "2024-03-10");
    CHECK(s.ends(back, "2024-05-10") == "2024-05-09");
    CHECK(s.ends(back) == "2024-05-09");
    s.work(back, "2024-05-21");
    CHECK(s.ends(back) == "asleep");
    s.stored("2024-06-10", "2024-06-20");
    CHECK(s.ends(back) == "asleep");  // 2024-05-21 is within 30 days before it
    s.stored("2024-06-28", "2024-06-30");
    CHECK(s.ends(back) == "2024-06-29");
}

TEST_CASE("work for a return counts within its interval before the first day back",
          "[limits][storage]") {
    for (const auto& [done, ends] : {std::pair{"2024-04-09", "2024-05-09"},
                                     std::pair{"2024-04-10", "asleep"},
                                     std::pair{"2024-05-10", "asleep"}}) {
        CAPTURE(done);
        Stored s;
        const facts::Fact back = s.item(InForce::on_return, 30);
        s.stored("2024-03-10", "2024-05-10");
        s.work(back, done);
        CHECK(s.ends(back) == ends);
    }
    Stored s;
    const facts::Fact back = s.item(InForce::on_return, 30);
    s.stored("2024-06-10");
    s.work(back, "2024-06-20");
    CHECK(s.ends(back, "2024-06-25") == "2024-06-10");  // its first day back is not known
}

TEST_CASE("a limit that always counts runs on in storage", "[limits][storage]") {
    Stored s;
    const facts::Fact always = s.item(InForce::always, 100);
    const std::string before = s.ends(always);
    CHECK(before == "2024-04-10");
    s.stored("2024-02-01");
    CHECK(s.ends(always) == before);
}

TEST_CASE("being out of service without preservation is no storage", "[limits][storage]") {
    Stored s;
    const facts::Fact turned = s.item(InForce::in_storage, 14);
    const facts::Fact back = s.item(InForce::on_return, 30);
    s.keep(s.ann.write(day("2024-06-10"), {s.id()}, facts::OutOfService{}));
    CHECK(s.ends(turned) == "asleep");
    CHECK(s.ends(back) == "asleep");
}

TEST_CASE("hours in storage stand still and count from where they always do", "[limits][storage]") {
    Stored s;
    facts::LimitSet limit = Stored::counted(InForce::in_storage, 14);
    limit.hours = base::hours(100);
    limit.anchor_total = base::hours(1100);
    const facts::Fact run = s.keep(s.ann.add(
        day("2024-01-01"), {s.id()}, facts::ItemAdded{"Run", facts::ItemRole::inspection, {}}));
    s.keep(s.ann.write(day("2024-01-01"), s.with(run), limit));
    s.stored("2024-06-10");
    const limits::ItemDue due = s.due(run);
    CHECK(limits::clock_of(due, facts::Clock::hours)->left == base::hours(40));
    CHECK(limits::clock_of(due, facts::Clock::calendar)->days_left == -7);
}
