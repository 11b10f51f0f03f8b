find_package(GTest REQUIRED)
include(GoogleTest)

# Under the sanitizers what is tested is optimised; the tests themselves are not, and compile in two thirds of the time.
add_library(test_rules INTERFACE)
target_link_libraries(test_rules INTERFACE house_rules)
target_compile_options(test_rules INTERFACE $<$<CONFIG:Debug>:-O0>)

# hammerline_core_test(<room> SOURCES file… [LIBRARIES target…]): one executable a room, no Qt.
# It sees the room and what the room sees, HAMMERLINE_SOURCE_DIR for sample data, and tests/support.
function(hammerline_core_test room)
  cmake_parse_arguments(PARSE_ARGV 1 arg "" "" "SOURCES;LIBRARIES")
  add_executable(${room}_test ${arg_SOURCES})
  target_include_directories(${room}_test PRIVATE "${PROJECT_SOURCE_DIR}/tests")
  target_compile_definitions(${room}_test PRIVATE HAMMERLINE_SOURCE_DIR="${PROJECT_SOURCE_DIR}")
  target_link_libraries(${room}_test PRIVATE test_rules ${room} ${arg_LIBRARIES} GTest::gtest GTest::gmock GTest::gtest_main)
  gtest_discover_tests(${room}_test DISCOVERY_MODE PRE_TEST PROPERTIES LABELS core TIMEOUT 300)
endfunction()

# hammerline_window_test(<room> SOURCES file… [LIBRARIES target…]): one executable a room, offscreen, real key presses.
function(hammerline_window_test room)
  cmake_parse_arguments(PARSE_ARGV 1 arg "" "" "SOURCES;LIBRARIES")
  qt_add_executable(${room}_test ${arg_SOURCES} "${PROJECT_SOURCE_DIR}/tests/support/window_test_main.cpp")
  target_include_directories(${room}_test PRIVATE "${PROJECT_SOURCE_DIR}/tests")
  target_compile_definitions(${room}_test PRIVATE HAMMERLINE_SOURCE_DIR="${PROJECT_SOURCE_DIR}")
  target_link_libraries(${room}_test PRIVATE test_rules ${room} core ${arg_LIBRARIES} Qt6::Test GTest::gtest GTest::gmock)
  gtest_discover_tests(${room}_test DISCOVERY_MODE PRE_TEST PROPERTIES LABELS window TIMEOUT 300
    ENVIRONMENT "QT_QPA_PLATFORM=offscreen;LC_ALL=C.UTF-8;TZ=UTC")
endfunction()
