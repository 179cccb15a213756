#include "app/command/command_line.hpp"
#include "app/tables/tables.hpp"

#include <QCoreApplication>

#include <iostream>

/// Puts the parts together; the only file that sees them all.
int main(int argc, char** argv)
{
    QStringList arguments;
    for (int i = 1; i < argc; ++i)
        arguments << QString::fromLocal8Bit(argv[i]);

    const app::CommandResult result =
        app::runCommandLine(arguments, &app::loadTables, {std::cin, std::cout, std::cerr});
    if (!result.windowGarden)
        return result.status;
    std::cerr << "underbough: this build has no window; \"underbough --help\" lists the commands\n";
    return app::kUnusable;
}
