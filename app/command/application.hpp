#pragma once

#include <QCoreApplication>
#include <QTranslator>

#include <array>
#include <memory>
#include <string>

namespace app {

/// What a command needs of Qt: its words in the person's language and, for paper, letters and
/// drawings, which take no screen. Does nothing where the caller has an application already.
class Application {
public:
    enum class For {
        words,    ///< only made where there is a translation to speak
        drawings, ///< always made
    };

    explicit Application(For purpose);
    ~Application();
    Application(const Application&) = delete;
    Application& operator=(const Application&) = delete;

private:
    int count_{1};
    std::string name_{"underbough"};
    std::array<char*, 2> arguments_{name_.data(), nullptr};
    std::unique_ptr<QCoreApplication> application_;
    std::unique_ptr<QTranslator> translation_; ///< goes before the application does
};

} // namespace app
