// Every call of the page that hands over text or bytes, in any order, with anything in it. Fonts
// are left out: they are part of the program and named by their hash.
#include <cstddef>
#include <cstdint>
#include <fuzzer/FuzzedDataProvider.h>
#include <string>

#include "tests/app/fake_host.hpp"
#include "wasm/app.hpp"

using namespace twoclocks::canvas;
using twoclocks::canvas::support::FakeHost;

namespace {

constexpr int calls_most = 40;
constexpr std::size_t text_most = 2000;

class Caller {
  public:
    Caller(const std::uint8_t* bytes, std::size_t length) : given_{bytes, length} {
        app_.refresh({20'782, 1'795'600'000'000, 1, 2});
    }

    void run() {
        for (int calls = 0; calls < calls_most && given_.remaining_bytes() > 0; ++calls)
            call();
        app_.loaded();
        (void)app_.frame(16);
    }

  private:
    std::string text() { return given_.ConsumeRandomLengthString(text_most); }

    int below(int end) { return given_.ConsumeIntegralInRange(0, end - 1); }

    /// What can be tapped now, or any name at all.
    std::string node() {
        const auto& nodes = app_.scene().nodes();
        if (nodes.empty() || given_.ConsumeBool()) return text();
        return nodes[given_.ConsumeIntegralInRange<std::size_t>(0, nodes.size() - 1)].id;
    }

    void call() {
        switch (below(18)) {
            case 0:
                return app_.set_region(text(), text(), below(4));
            case 1:
                return app_.set_device(text());
            case 2:
                return app_.set_setting(setting(), text());
            case 3:
                return app_.stored_draft(text());
            case 4:
                return (void)app_.stored(StoredKind::snapshot, text());
            case 5:
                return (void)app_.stored(StoredKind::segment, segment());
            case 6:
                return app_.storage_note(text(), given_.ConsumeIntegral<std::int64_t>());
            case 7:
                return app_.other_tab_wrote(segment());
            case 8:
            case 9:
                return app_.file_chosen(text(), text());
            case 10:
            case 11:
                return app_.activate(node());
            case 12:
                return app_.focus(node());
            case 13:
            case 14:
                return app_.field_text(node(), text());
            case 15:
                return app_.field_closed(node(), given_.ConsumeBool());
            case 16:
                app_.loaded();
                (void)app_.frame(16);
                return;
            default:
                return answer();
        }
    }

    std::string setting() {
        static const char* const names[]{
            "caution", "author", "last_export", "text_size", "page", "keys", "theme"};
        return below(4) == 0 ? text() : names[below(7)];
    }

    std::string segment() {
        static const std::string head{"{\"segment\":"};
        static const std::string heads[]{head + "\"facts\"}\n",
                                         head + "\"import\",\"batch\":1,\"at\":1,\"name\":\"a\"}\n",
                                         head + "\"aside\",\"batch\":1,\"aside\":true}\n",
                                         {}};
        return heads[below(4)] + text();
    }

    void answer() {
        for (const auto& [token, bytes] : std::exchange(host_.asked, {}))
            app_.committed(token, given_.ConsumeBool(), text());
        app_.committed(given_.ConsumeIntegral<std::uint32_t>(), given_.ConsumeBool(), text());
    }

    FuzzedDataProvider given_;
    FakeHost host_;
    App app_{host_};
};

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* bytes, std::size_t length) {
    Caller{bytes, length}.run();
    return 0;
}
