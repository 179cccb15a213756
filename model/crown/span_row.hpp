#pragma once

#include "model/geometry/curtain.hpp"

#include <algorithm>
#include <cstddef>
#include <span>
#include <vector>

namespace model {

/// Stretches of one level line, sorted and apart from each other. In line, for it is asked a
/// hundred thousand times for one tree.
class SpanRow {
public:
    void clear()
    {
        size_ = 0;
        length_ = 0.0;
    }
    [[nodiscard]] bool empty() const { return size_ == 0; }
    /// Of all stretches together.
    [[nodiscard]] double length() const { return length_; }
    [[nodiscard]] std::span<const Interval> spans() const { return {spans_.data(), size_}; }

    /// Adds one stretch. \param from  no stretch before this one ends in it
    /// \returns where it went, to start from for stretches further along
    std::size_t cover(Interval stretch, std::size_t from = 0)
    {
        std::size_t first = from;
        while (first < size_ && spans_[first].to < stretch.from)
            ++first;
        std::size_t last = first;
        for (; last < size_ && spans_[last].from <= stretch.to; ++last) {
            length_ -= spans_[last].to - spans_[last].from;
            stretch = {std::min(stretch.from, spans_[last].from),
                       std::max(stretch.to, spans_[last].to)};
        }
        length_ += stretch.to - stretch.from;
        if (first == last)
            makeRoom(first);
        else
            close(first + 1, last);
        spans_[first] = stretch;
        return first;
    }

    /// Adds another row.
    void cover(std::span<const Interval> row)
    {
        std::size_t at = 0;
        for (const auto& stretch : row)
            at = cover(stretch, at);
    }

    /// Takes away what another row covers. \param scratch  its old content is lost
    void subtract(const SpanRow& other, SpanRow& scratch)
    {
        scratch.clear();
        for (const auto& span : spans()) {
            double from = span.from;
            for (const auto& hidden : other.spans()) {
                if (hidden.to <= from)
                    continue;
                if (hidden.from >= span.to)
                    break;
                if (hidden.from > from)
                    scratch.append({from, hidden.from});
                from = hidden.to;
            }
            if (from < span.to)
                scratch.append({from, span.to});
        }
        std::swap(*this, scratch);
    }

private:
    void append(Interval stretch)
    {
        makeRoom(size_);
        spans_[size_ - 1] = stretch;
        length_ += stretch.to - stretch.from;
    }
    void makeRoom(std::size_t at)
    {
        if (size_ == spans_.size())
            spans_.resize(2 * size_ + 8);
        for (std::size_t i = size_; i > at; --i)
            spans_[i] = spans_[i - 1];
        ++size_;
    }
    void close(std::size_t gap, std::size_t next)
    {
        if (gap == next)
            return;
        for (; next < size_; ++gap, ++next)
            spans_[gap] = spans_[next];
        size_ = gap;
    }

    std::vector<Interval> spans_; ///< the first size_ count
    std::size_t size_{};
    double length_{};
};

} // namespace model
