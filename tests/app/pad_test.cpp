// The pad beside its digits: clearing all of them, and the day that is one tap away.
#include "catch_amalgamated.hpp"
#include "tests/app/fake_host.hpp"
#include "tests/app/shown.hpp"
#include "tests/support/said.hpp"

#include <string>

namespace {

using namespace twoclocks;
using namespace twoclocks::canvas;
using canvas::support::FakeHost;
using canvas::support::pad;
using twoclocks::support::said;

}  // namespace

TEST_CASE("the pad clears all digits, and brings them back", "[app][log]") {
    FakeHost host;
    AppState app{host};
    canvas::support::start(app);
    canvas::support::add_aircraft(app);
    host.answer(app);
    app.apply(intent::OpenLog{});
    CHECK_FALSE(pad(app).can_clear);
    for (const char key : std::string{"1002.3"})
        app.apply(intent::PadKey{key});
    CHECK(pad(app).can_clear);
    app.apply(intent::PadKey{'c'});
    CHECK(pad(app).digits.empty());
    CHECK(pad(app).can_undo_clear);
    app.apply(intent::PadKey{'u'});
    CHECK(pad(app).digits == "1002.3");
    app.apply(intent::PadKey{'c'});
    app.apply(intent::PadKey{'9'});
    CHECK(pad(app).digits == "9");
    CHECK_FALSE(pad(app).can_undo_clear);  // another figure has begun
    CHECK(said(pad(app).days.at(0).label) == "Yesterday");
    app.apply(intent::FillField{"date", pad(app).days.at(0).text});
    CHECK(pad(app).date_text == "2026-11-24");
    CHECK(said(pad(app).days.at(0).label) == "Today");
}
