// Any bytes as a type template.
#include <cstddef>
#include <cstdint>
#include <string>

#include "engine/base/region.hpp"
#include "engine/facts/type_template.hpp"
#include "tests/fuzz/must.hpp"

using namespace twoclocks;

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* bytes, std::size_t length) {
    const std::string text{reinterpret_cast<const char*>(bytes), length};
    const base::Result<facts::TypeTemplate> read = facts::parse_template(text);
    // What is refused says why, in words.
    if (!read) {
        fuzz::must(!read.problems().empty());
        for (const base::Problem& problem : read.problems())
            fuzz::must(!base::say_what(problem, {}).empty());
    }
    return 0;
}
