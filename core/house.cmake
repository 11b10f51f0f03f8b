# The house: which room stands on which floor, and one CMake target a room.
#
# A room sees every room on the floors below it and no other: its target is handed only their include paths,
# so an arrow that points up or sideways does not compile. The include path of a room is a folder of the build
# tree that holds a single link, <room> -> the room's source folder; "units/units.h" is found only by those
# who may see units. Moving a room to another floor is an edit of these two lists and nothing else.
#
# `+` joins rooms that stand on one floor; they are blind to each other.

set(HOUSE_CORE_FLOORS
  outcome
  units
  keyboard
  catalogue
  instrument
  readings
  tolerance+dossier
  analysis
  action
  decisions
  sale_record+review+route+slips+strict_json
  logbook+exchange
  seal+demo_workshop+shop)
set(HOUSE_APP_FLOORS
  wording+prompts
  keyboard_strip+charts+gauge_input+paper+sounding
  bench+gauge_desk+review_desk+plan_sheet+record_pdf+instrument_file+bench_sheet+study_desk
  command_line+main_window)

# Warnings are errors, everywhere.
add_library(house_rules INTERFACE)
target_compile_options(house_rules INTERFACE
  -Wall -Wextra -Wpedantic -Wshadow -Wconversion -Wsign-conversion -Wnon-virtual-dtor -Wold-style-cast
  -Woverloaded-virtual -Wnull-dereference -Wdouble-promotion -Wformat=2 -Wimplicit-fallthrough)
if(CMAKE_CXX_COMPILER_ID STREQUAL "GNU")
  target_compile_options(house_rules INTERFACE -Werror) # the compiler of the house; clang only fuzzes
endif()
# GCC 12 cries wolf where it inlines the standard library: std::string (its bug 105651), a vector's first element, a
# member's destructor on the way out of a constructor that cannot throw.
target_compile_options(house_rules INTERFACE
  $<$<AND:$<CXX_COMPILER_ID:GNU>,$<CONFIG:Release>>:-Wno-restrict;-Wno-null-dereference;-Wno-maybe-uninitialized>)
if(HAMMERLINE_SANITIZE)
  target_compile_options(house_rules INTERFACE -fsanitize=${HAMMERLINE_SANITIZE} -fno-omit-frame-pointer)
  target_link_options(house_rules INTERFACE -fsanitize=${HAMMERLINE_SANITIZE})
  # GCC's sanitizers make its null-dereference warning cry wolf.
  target_compile_options(house_rules INTERFACE -Wno-null-dereference -Wno-maybe-uninitialized)
endif()

# house_rooms_below(<room> <out>): every room on a lower floor; core's floors lie below all of app's.
function(house_rooms_below room out)
  set(below "")
  foreach(floor IN LISTS HOUSE_CORE_FLOORS HOUSE_APP_FLOORS)
    string(REPLACE "+" ";" rooms "${floor}")
    if(room IN_LIST rooms)
      set(${out} "${below}" PARENT_SCOPE)
      return()
    endif()
    list(APPEND below ${rooms})
  endforeach()
  message(FATAL_ERROR "${room} stands on no floor of core/house.cmake")
endfunction()

# hammerline_room(<room> SOURCES file… [LIBRARIES target…] [PUBLIC_LIBRARIES target…])
# Called from the room's own CMakeLists.txt. A room without sources (headers alone) is an interface target.
function(hammerline_room room)
  cmake_parse_arguments(PARSE_ARGV 1 arg "" "" "SOURCES;LIBRARIES;PUBLIC_LIBRARIES")
  set(door "${CMAKE_BINARY_DIR}/house/${room}")
  file(MAKE_DIRECTORY "${door}")
  file(CREATE_LINK "${CMAKE_CURRENT_SOURCE_DIR}" "${door}/${room}" SYMBOLIC)
  house_rooms_below(${room} below)
  set(seen "")
  foreach(lower IN LISTS below)
    if(TARGET ${lower})
      list(APPEND seen ${lower})
    endif()
  endforeach()
  if(arg_SOURCES)
    add_library(${room} STATIC ${arg_SOURCES})
    target_include_directories(${room} PUBLIC "${door}")
    target_link_libraries(${room} PRIVATE house_rules PUBLIC ${seen} ${arg_PUBLIC_LIBRARIES} PRIVATE ${arg_LIBRARIES})
  else()
    add_library(${room} INTERFACE)
    target_include_directories(${room} INTERFACE "${door}")
    target_link_libraries(${room} INTERFACE ${seen} ${arg_PUBLIC_LIBRARIES})
  endif()
endfunction()
