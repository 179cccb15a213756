#include "model/advice/closest.hpp"

#include <functional>

namespace model::advice {
namespace {

constexpr int kHalvings = 12; // to a four-thousandth of what is lacking

/// One thing that lacks something, as a handle on its share.
using Handle = std::function<double&(Ease&)>;

std::vector<Handle> lacking(const Targets& targets)
{
    std::vector<Handle> handles;
    for (const auto strip : targets.lackingStrips())
        handles.emplace_back([strip](Ease& ease) -> double& { return ease.strips[strip]; });
    if (targets.lacksRelief())
        handles.emplace_back([](Ease& ease) -> double& { return ease.relief; });
    if (targets.lacksLight())
        handles.emplace_back([](Ease& ease) -> double& { return ease.light; });
    return handles;
}

class Approach {
public:
    Approach(const Guideline& guideline, Targets& targets)
        : guideline_(guideline), targets_(targets), ease_(targets.whole())
    {
    }

    void start(const std::vector<Handle>& handles)
    {
        for (const auto& handle : handles)
            handle(ease_) = 0.0;
        targets_.ease(ease_);
        take(guideline_.least(targets_));
    }

    /// Raises these together as far as can be.
    void raise(const std::vector<Handle>& handles)
    {
        if (!best_.found)
            return;
        double low = handles.front()(ease_);
        double high = 1.0;
        for (int i = 0; i < kHalvings; ++i) {
            Ease tried = ease_;
            const double middle = (low + high) / 2.0;
            for (const auto& handle : handles)
                handle(tried) = middle;
            targets_.ease(tried);
            const bool found = take(guideline_.least(targets_));
            (found ? low : high) = middle;
            if (found)
                ease_ = tried;
        }
    }

    Choice finish()
    {
        targets_.ease(ease_);
        return best_;
    }

private:
    bool take(Choice choice)
    {
        const long nodes = best_.nodes + choice.nodes;
        const bool found = choice.found;
        if (found || !best_.found)
            best_ = std::move(choice);
        best_.nodes = nodes;
        return found;
    }

    const Guideline& guideline_;
    Targets& targets_;
    Ease ease_;
    Choice best_;
};

} // namespace

Choice closest(const Guideline& guideline, Targets& targets)
{
    const auto handles = lacking(targets);
    Approach approach(guideline, targets);
    approach.start(handles);
    if (!handles.empty())
        approach.raise(handles);
    if (handles.size() > 1)
        for (const auto& handle : handles)
            approach.raise({handle});
    return approach.finish();
}

} // namespace model::advice
