// Usage: write_seeds FOLDER - a folder of seeds for each target, for the fuzzers to start from.
#include "tests/fuzz/seeds.hpp"

#include <filesystem>
#include <fstream>
#include <iostream>

int main(int count, char** arguments)
{
    if (count != 2) {
        std::cerr << "Usage: write_seeds FOLDER\n";
        return 2;
    }
    for (auto seeds : {fuzz::seeds(), fuzz::found()})
        for (const auto& seed : seeds) {
            const auto folder = std::filesystem::path(arguments[1]) / seed.target;
            std::filesystem::create_directories(folder);
            std::ofstream(folder / seed.name, std::ios::binary) << seed.bytes;
        }
}
