#include "model/advice/closest.hpp"

#include <functional>

namespace model::advice {
namespace {

constexpr int kHalvings = 8; // to a 250th of what is lacking: 4 mm of a metre

/// One thing that lacks something, as a handle on its share.
using Handle = std::function<double&(Ease&)>;

std::vector<Handle> lacking(const Targets& targets, std::optional<Lack> only)
{
    const auto asked = [&](Lack lack) { return !only || only == lack; };
    std::vector<Handle> handles;
    if (asked(Lack::headroom))
        for (const auto strip : targets.lackingStrips())
            handles.emplace_back([strip](Ease& ease) -> double& { return ease.strips[strip]; });
    if (asked(Lack::relief) && targets.lacksRelief())
        handles.emplace_back([](Ease& ease) -> double& { return ease.relief; });
    if (asked(Lack::light) && targets.lacksLight())
        handles.emplace_back([](Ease& ease) -> double& { return ease.light; });
    return handles;
}

class Approach {
public:
    Approach(const Guideline& guideline, Targets& targets)
        : guideline_(guideline), targets_(targets), ease_(targets.whole())
    {
    }

    /// Everything that is lacking may stay so.
    void start()
    {
        for (const auto& handle : lacking(targets_, std::nullopt))
            handle(ease_) = 0.0;
        targets_.ease(ease_);
        take(guideline_.least(targets_));
    }

    void start(const Closest& known)
    {
        ease_ = known.ease;
        best_ = known.choice;
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
            const bool found = take(guideline_.any(targets_));
            (found ? low : high) = middle;
            if (found) {
                ease_ = tried;
                raised_ = true;
            }
        }
    }

    /// The least leaf for what was reached.
    Closest finish()
    {
        targets_.ease(ease_);
        if (raised_) {
            auto least = guideline_.least(targets_);
            least.found = least.found && least.leaf <= best_.leaf; // not dearer than what is known
            take(std::move(least));
        }
        return {best_, ease_};
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
    bool raised_{};
};

} // namespace

Closest closest(const Guideline& guideline, Targets& targets, std::optional<Lack> only,
                const std::optional<Closest>& known)
{
    const auto handles = lacking(targets, only);
    Approach approach(guideline, targets);
    if (known)
        approach.start(*known);
    else
        approach.start();
    if (!handles.empty())
        approach.raise(handles);
    if (handles.size() > 1)
        for (const auto& handle : handles)
            approach.raise({handle});
    return approach.finish();
}

} // namespace model::advice
