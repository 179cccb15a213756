# The program, included last: it sees every part.
find_package(Qt6 6.4 REQUIRED COMPONENTS Core Gui Sql Qml Quick Quick3D QuickControls2)
include(GNUInstallDirs)
add_executable(underbough ${PROJECT_SOURCE_DIR}/app/main.cpp)
target_link_libraries(underbough PRIVATE warnings app window)
install(TARGETS underbough DESTINATION ${CMAKE_INSTALL_BINDIR})
