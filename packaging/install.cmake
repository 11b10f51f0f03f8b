# What is installed where, and what the package holds.
