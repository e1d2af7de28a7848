// What went wrong, in a form that can be shown, counted and tested.
//
// A user's mistake is a Problem: collected with all the others, never thrown, never only the first.
// A programmer's mistake is an assertion.
#pragma once

#include <cassert>
#include <cstdint>
#include <string>
#include <utility>
#include <variant>
#include <vector>

#include "engine/base/message.hpp"

namespace twoclocks::base {

/// How much a problem stops. refused: nothing was stored. question: stored, a person must choose.
/// caution: stored and used, but look at it.
enum class Severity : std::uint8_t { refused, question, caution };

/// One thing that is wrong: what happened, what to do, and where.
struct Problem {
    Trouble code{};
    std::vector<Arg> args;
    Severity severity{Severity::refused};
    std::int32_t line{0};  // 1 is the first line of the file; 0 is no file
    std::string field;     // name of the field, empty when it is the whole record
};

using Problems = std::vector<Problem>;

/// A value, or the problems that kept it from being one.
template <class T>
class [[nodiscard]] Result {
  public:
    Result(T value) : held_(std::move(value)) {}  // NOLINT: a value is one

    Result(Problem problem) : held_(Problems{std::move(problem)}) {}  // NOLINT: so is a problem

    Result(Problems problems) : held_(std::move(problems)) {
        assert(!std::get<Problems>(held_).empty());
    }

    [[nodiscard]] bool ok() const { return std::holds_alternative<T>(held_); }

    [[nodiscard]] explicit operator bool() const { return ok(); }

    [[nodiscard]] const T& value() const {
        assert(ok());
        return *std::get_if<T>(&held_);
    }

    [[nodiscard]] T& value() {
        assert(ok());
        return *std::get_if<T>(&held_);
    }

    [[nodiscard]] const Problems& problems() const {
        assert(!ok());
        return *std::get_if<Problems>(&held_);
    }

  private:
    std::variant<T, Problems> held_;
};

/// Makes a problem that refuses.
/// Units: none. Errors: none. Source: our choice, for short call sites.
[[nodiscard]] inline Problem trouble(Trouble code, std::vector<Arg> args = {}) {
    return Problem{code, std::move(args), Severity::refused, 0, {}};
}

}  // namespace twoclocks::base
