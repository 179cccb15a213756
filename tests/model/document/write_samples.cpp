#include "model/document/garden_json.hpp"
#include "tests/model/document/random_garden.hpp"

#include <fstream>
#include <iostream>
#include <string>

/// write_samples FOLDER COUNT: random gardens as files 1.json ... for the schema's own check.
int main(int count, char** words)
{
    if (count != 3) {
        std::cerr << "usage: write_samples FOLDER COUNT\n";
        return 2;
    }
    const std::string folder = words[1];
    for (std::uint32_t seed = 1; seed <= std::stoul(words[2]); ++seed) {
        std::ofstream file(folder + "/" + std::to_string(seed) + ".json", std::ios::binary);
        file << model::writeGarden(randomGarden(seed));
        if (!file.flush()) {
            std::cerr << "can't write into " << folder << "\n";
            return 1;
        }
    }
    return 0;
}
