#include "tests/outside/outside_check.hpp"

#include <gtest/gtest-spi.h>
#include <gtest/gtest.h>

#include <cmath>
#include <cstdlib>
#include <filesystem>
#include <fstream>

namespace {

// Law: what the tolerance lets pass passes, what it doesn't fails, and so does what is no number.
TEST(OutsideCheck, FailsJustPastItsTolerance)
{
    OUTSIDE_NEAR(10.49, 10.0, 0.5);
    OUTSIDE_NEAR(9.51, 10.0, 0.5);
    OUTSIDE_WITHIN(65.0, 65.0, 110.0);
    OUTSIDE_WITHIN(110.0, 65.0, 110.0);
    EXPECT_NONFATAL_FAILURE(OUTSIDE_NEAR(10.51, 10.0, 0.5) << "too much", "too much");
    EXPECT_NONFATAL_FAILURE(OUTSIDE_NEAR(9.49, 10.0, 0.5), "9.49 is 9.49");
    EXPECT_NONFATAL_FAILURE(OUTSIDE_NEAR(std::nan(""), 10.0, 0.5), "nan");
    EXPECT_NONFATAL_FAILURE(OUTSIDE_WITHIN(64.9, 65.0, 110.0), "64.9");
    EXPECT_NONFATAL_FAILURE(OUTSIDE_WITHIN(110.1, 65.0, 110.0), "110.1");
}

TEST(OutsideCheck, TellsAMissThatIsNotDemanded)
{
    OUTSIDE_TOLD(53.0, 65.0, 110.0) << "no failure";
}

TEST(OutsideCheck, LeavesOneLineOfJsonForEachFigure)
{
    const auto folder = std::filesystem::temp_directory_path() / "underbough-outside-check-test";
    std::filesystem::create_directories(folder);
    const char* before = std::getenv("UNDERBOUGH_OUTSIDE_CHECKS");
    const std::string kept = before ? before : "";
    ASSERT_EQ(setenv("UNDERBOUGH_OUTSIDE_CHECKS", folder.c_str(), 1), 0);
    OUTSIDE_NEAR(0.25, 0.5, 0.5) << "a \"quoted\" case";
    OUTSIDE_TOLD(2.0, 0.0, 1.0);
    ASSERT_EQ(before ? setenv("UNDERBOUGH_OUTSIDE_CHECKS", kept.c_str(), 1)
                     : unsetenv("UNDERBOUGH_OUTSIDE_CHECKS"),
              0);
    std::ifstream in(folder / "tests_outside_outside_check_test.cpp.OutsideCheck."
                              "LeavesOneLineOfJsonForEachFigure.jsonl");
    std::string first;
    std::string second;
    std::getline(in, first);
    std::getline(in, second);
    EXPECT_NE(first.find(R"("what":"0.25","case":"a \"quoted\" case","computed":0.25,)"
                         R"("expected":0.5,"tolerance":0.5,"range":false,"held":true})"),
              std::string::npos)
        << first;
    EXPECT_NE(second.find(R"("computed":2,"expected":0.5,"tolerance":0.5,"range":true,)"
                          R"("held":false})"),
              std::string::npos)
        << second;
    std::filesystem::remove_all(folder);
}

} // namespace
