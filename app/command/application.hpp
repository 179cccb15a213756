#pragma once

#include <QCoreApplication>
#include <QLocale>

#include <array>
#include <memory>
#include <string>

namespace app {

/// What a command needs of Qt: its words in the person's language and, for paper, letters and
/// drawings, which take no screen. Only speaks where the caller has an application already.
class Application {
public:
    enum class For {
        words,    ///< only made where there is a translation to speak
        drawings, ///< always made
    };

    Application(For purpose, const QLocale& locale);
    ~Application();
    Application(const Application&) = delete;
    Application& operator=(const Application&) = delete;

private:
    int count_{1};
    std::string name_{"underbough"};
    std::array<char*, 2> arguments_{name_.data(), nullptr};
    std::unique_ptr<QCoreApplication> application_;
};

} // namespace app
