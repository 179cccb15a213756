#include "app/assess/kept_memory.hpp"
#include "app/command/command_line.hpp"
#include "app/tables/tables.hpp"
#include "app/window/window.hpp"

#include <iostream>

/// Puts the parts together; the only file that sees them all.
int main(int argc, char** argv)
{
    app::keepFreedMemory();
    QStringList arguments;
    for (int i = 1; i < argc; ++i)
        arguments << QString::fromLocal8Bit(argv[i]);

    const app::CommandResult result =
        app::runCommandLine(arguments, &app::loadTables, {std::cin, std::cout, std::cerr});
    if (!result.windowGarden)
        return result.status;
    if (!app::hasDisplay()) {
        std::cerr << "underbough: there is no display to open a window on; \"underbough assess "
                     "GARDEN\" answers in words\n";
        return app::kUnusable;
    }
    const auto tables = app::loadTables();
    return app::runWindow(argc, argv, tables,
                          {*result.windowGarden, std::nullopt, result.language});
}
