# Makes a source file of a catalog: cmake -D FROM=de.toml -D TO=german_words.cpp -D NAME=germanWords -P words_source.cmake
file(READ "${FROM}" text)
# a string literal may not be too long for a compiler, so each line has its own
string(REPLACE "\\" "\\\\" text "${text}")
string(REPLACE "\"" "\\\"" text "${text}")
string(REPLACE "\n" "\\n\"\n    \"" text "${text}")
file(WRITE "${TO}"
    "namespace sheerlay::core::detail {\nextern const char* const ${NAME};\nconst char* const ${NAME} =\n    \"${text}\";\n} // namespace sheerlay::core::detail\n")
