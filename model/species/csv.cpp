#include "model/species/csv.hpp"

namespace model {
namespace {

class Reader {
public:
    explicit Reader(std::string_view text) : text_(text)
    {
        constexpr std::string_view kByteOrderMark = "\xEF\xBB\xBF";
        if (text_.starts_with(kByteOrderMark))
            at_ = kByteOrderMark.size();
    }

    std::vector<CsvRow> rows()
    {
        std::vector<CsvRow> rows;
        while (!atEnd()) {
            if (atLineEnd())
                lineEnd();
            else if (rows.empty() && peek() == '#')
                skipLine();
            else
                rows.push_back(row());
        }
        return rows;
    }

private:
    [[nodiscard]] bool atEnd() const { return at_ >= text_.size(); }
    [[nodiscard]] char peek() const { return text_[at_]; }
    [[nodiscard]] bool atLineEnd() const { return atEnd() || peek() == '\n' || peek() == '\r'; }

    void skipLine()
    {
        while (!atLineEnd())
            ++at_;
        lineEnd();
    }

    void lineEnd()
    {
        if (atEnd())
            return;
        if (text_.substr(at_).starts_with("\r\n"))
            at_ += 2;
        else if (peek() == '\n')
            ++at_;
        else
            throw CsvError(line_, "a carriage return without a line feed");
        ++line_;
    }

    CsvRow row()
    {
        CsvRow row{line_, {}};
        row.cells.push_back(cell());
        while (!atEnd() && peek() == ',') {
            ++at_;
            row.cells.push_back(cell());
        }
        if (!atLineEnd())
            throw CsvError(line_, "text after a closing quote");
        lineEnd();
        return row;
    }

    std::string cell() { return !atEnd() && peek() == '"' ? quoted() : bare(); }

    std::string bare()
    {
        const auto from = at_;
        for (; !atLineEnd() && peek() != ','; ++at_)
            if (peek() == '"')
                throw CsvError(line_, "a quote inside a cell that doesn't begin with one");
        return std::string(text_.substr(from, at_ - from));
    }

    std::string quoted()
    {
        const auto opened = line_;
        std::string value;
        for (++at_; !atEnd(); ++at_) {
            if (peek() == '"') {
                if (!text_.substr(at_).starts_with("\"\"")) {
                    ++at_;
                    return value;
                }
                ++at_;
            }
            line_ += peek() == '\n' ? 1 : 0;
            value += peek();
        }
        throw CsvError(opened, "a quote that is never closed");
    }

    std::string_view text_;
    std::size_t at_{0};
    std::size_t line_{1};
};

} // namespace

std::vector<CsvRow> readCsv(std::string_view text)
{
    return Reader(text).rows();
}

} // namespace model
