#include "engine/facts/related.hpp"

#include <set>

#include "engine/facts/field_visitor.hpp"
#include "engine/facts/fields.hpp"

namespace twoclocks::facts {
namespace {

/// Every id that a record names.
class NamedIds : public FieldTeller {
  public:
    [[nodiscard]] std::vector<base::Id> of(const Fact& fact) {
        out_ = {fact.id};
        add(fact.body);
        return std::move(out_);
    }

    void maybe_ids(std::string_view, const std::vector<base::Id>& ids) override {
        out_.insert(out_.end(), ids.begin(), ids.end());
    }

    void ref(std::string_view, const Ref& ref) override { out_.push_back(ref.id); }

    void refs(std::string_view, const std::vector<Ref>& refs) override {
        for (const Ref& ref : refs)
            out_.push_back(ref.id);
    }

    void renewals(std::string_view, const std::vector<Renewal>& renewals) override {
        for (const Renewal& renewal : renewals)
            out_.push_back(renewal.item);
    }

    void body(std::string_view, const std::shared_ptr<const Body>& body) override {
        if (body) add(*body);
    }

  private:
    void add(const Body& body) {
        out_.insert(out_.end(), body.about.begin(), body.about.end());
        visit_fields(*this, body.fields);
    }

    std::vector<base::Id> out_;
};

}  // namespace

Journal related_to(const Journal& journal, base::Id subject) {
    Journal out;
    NamedIds named;
    std::set<base::Id> seen{subject};
    std::vector<base::Id> open{subject};
    while (!open.empty()) {
        const base::Id id = open.back();
        open.pop_back();
        for (const auto& found : {journal.with_id(id), journal.about(id), journal.naming(id)}) {
            for (const Fact* fact : found) {
                if (!out.add(*fact)) continue;
                for (const base::Id& next : named.of(*fact)) {
                    if (seen.insert(next).second) open.push_back(next);
                }
            }
        }
    }
    return out;
}

}  // namespace twoclocks::facts
