#include "engine/base/id.hpp"

#include "catch_amalgamated.hpp"
#include "tests/support/first_trouble.hpp"

#include <cstdint>
#include <limits>
#include <string>

using namespace twoclocks::base;
using twoclocks::support::first_trouble;

namespace {

constexpr std::uint64_t all_ones = std::numeric_limits<std::uint64_t>::max();
constexpr std::int64_t most_ms = (std::int64_t{1} << 48) - 1;

}  // namespace

TEST_CASE("an id has the layout of a UUID version 7", "[base][id]") {
    for (const std::uint64_t bits :
         {std::uint64_t{0}, std::uint64_t{0x0123'4567'89AB'CDEF}, all_ones}) {
        for (const std::int64_t wall_ms :
             {std::int64_t{0}, std::int64_t{1'790'000'000'123}, most_ms}) {
            const Id id = make_id(wall_ms, bits, bits);
            CHECK(id.high >> 16U == static_cast<std::uint64_t>(wall_ms));
            CHECK((id.high >> 12U & 0xFU) == 7);
            CHECK((id.high & 0xFFFU) == (bits & 0xFFFU));
            CHECK(id.low >> 62U == 2);
            CHECK((id.low & (all_ones >> 2U)) == (bits & (all_ones >> 2U)));
            CHECK(made_at_ms(id) == wall_ms);
            const std::string text = print_id(id);
            CHECK(text[14] == '7');
            CHECK(std::string{"89ab"}.find(text[19]) != std::string::npos);
        }
    }
}

TEST_CASE("a time that no id can hold is cut to the nearest one", "[base][id]") {
    CHECK(made_at_ms(make_id(-1, 0, 0)) == 0);
    CHECK(made_at_ms(make_id(std::numeric_limits<std::int64_t>::min(), 0, 0)) == 0);
    CHECK(made_at_ms(make_id(most_ms + 1, 0, 0)) == most_ms);
    CHECK(made_at_ms(make_id(std::numeric_limits<std::int64_t>::max(), 0, 0)) == most_ms);
}

TEST_CASE("ids order as their print does, by the time they were made first", "[base][id]") {
    const Id early = make_id(1'000, all_ones, all_ones);
    const Id late = make_id(1'001, 0, 0);
    CHECK(early < late);
    CHECK(print_id(early) < print_id(late));
    CHECK(make_id(1'000, 1, 0) < make_id(1'000, 2, 0));
    CHECK(make_id(1'000, 1, 1) < make_id(1'000, 1, 2));
}

TEST_CASE("an id prints and reads back the same", "[base][id]") {
    Id id = make_id(1'790'000'000'123, 0xABC, 0x0123'4567'89AB'CDEF);
    for (int turn = 0; turn < 64; ++turn) {
        const Result<Id> back = parse_id(print_id(id));
        REQUIRE(back.ok());
        CHECK((back.value() == id));
        id = {id.high << 1U | id.low >> 63U, id.low << 1U | id.high >> 63U};
    }
    CHECK(print_id({}) == "00000000-0000-0000-0000-000000000000");
    CHECK(Id{}.empty());
    CHECK_FALSE(Id{0, 1}.empty());
}

TEST_CASE("what is not the lower-case form of an id is refused", "[base][id]") {
    struct Row {
        const char* text;
        const char* outcome;
    };

    for (const Row& row : {Row{"017f22e2-79b0-7cc3-98c4-dc0c0c07398f", "accepted"},
                           Row{"", "id_malformed"},
                           Row{"017F22E2-79B0-7CC3-98C4-DC0C0C07398F", "id_malformed"},
                           Row{"017f22e2-79b0-7cc3-98c4-dc0c0c07398", "id_malformed"},
                           Row{"017f22e2-79b0-7cc3-98c4-dc0c0c07398f0", "id_malformed"},
                           Row{"017f22e2 79b0-7cc3-98c4-dc0c0c07398f", "id_malformed"},
                           Row{"017f22e2-79b0-7cc3-98c4-dc0c0c07398g", "id_malformed"},
                           Row{"017f22e-279b0-7cc3-98c4-dc0c0c07398f", "id_malformed"},
                           Row{"017f22e2-79b0-7cc3-98c4+dc0c0c07398f", "id_malformed"},
                           Row{"{17f22e2-79b0-7cc3-98c4-dc0c0c07398}", "id_malformed"},
                           Row{"017f22e279b07cc398c4dc0c0c07398f", "id_malformed"}}) {
        CAPTURE(row.text);
        CHECK(first_trouble(parse_id(row.text)) == row.outcome);
    }
}

TEST_CASE("a long text in place of an id is told cut, never inside a letter", "[base][id]") {
    std::string text;
    for (int i = 0; i < 100; ++i)
        text += "€";  // three bytes: 40 is inside the fourteenth
    std::string cut;
    for (int i = 0; i < 13; ++i)
        cut += "€";
    CHECK(parse_id(text).problems().front().args.front().text == cut + "…");
    CHECK_FALSE(parse_id(std::string(500, '\x80')).ok());
}
