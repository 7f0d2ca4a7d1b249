#include <quantity/quantity.h>

#include <iostream>

int main() { std::cout << "0.5 mm = " << sinewright::parse_quantity("0.5 mm", "m").si << " m\n"; }
