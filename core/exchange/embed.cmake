# Writes a C++ file that holds text files as raw string literals, sorted by name:
#   cmake -DOUT=embedded.cpp -DSETS=dir -DSETUPS=dir -P embed.cmake
# The array of a folder is named after it: <dir>/full-upright.json becomes {"full-upright", R"json(…)json"}.

function(embed_folder folder name out)
  file(GLOB files "${folder}/*.json")
  list(SORT files)
  set(body "")
  foreach(file IN LISTS files)
    get_filename_component(id "${file}" NAME_WLE)
    file(READ "${file}" text)
    string(APPEND body "        {\"${id}\", R\"json(${text})json\"},\n")
  endforeach()
  set(${out} "const std::vector<BuiltIn> &${name}()\n{\n    static const std::vector<BuiltIn> all{\n${body}    };\n    return all;\n}\n" PARENT_SCOPE)
endfunction()

embed_folder("${SETS}" builtInToleranceSets sets)
embed_folder("${SETUPS}" builtInSetups setups)
file(WRITE "${OUT}" "// Written by core/exchange/embed.cmake from resources/; edit the JSON files there.
#include \"exchange/built_in.h\"

namespace hammerline::exchange {

${sets}
${setups}
} // namespace hammerline::exchange
")
