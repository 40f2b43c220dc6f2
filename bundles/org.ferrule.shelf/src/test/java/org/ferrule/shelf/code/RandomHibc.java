/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.shelf.code;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Optional;
import java.util.Random;

/**
 * A random HIBC code with product and lot, and what it says.
 *
 * @param data without the plus in front and the check character behind, as the independent encoder takes it
 * @param code what it says
 */
record RandomHibc(String data, ProductCode code) {
    private static final String CHARACTERS = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ";

    /** Patterns of dates behind the digit that announces them. */
    private static final List<String> PATTERNS = List.of("2MMddyy", "3yyMMdd", "5yyDDD");

    /** Draws product, lot and serial numbers of at most that many characters. */
    static RandomHibc draw(Random random, int longest) {
        String di = "" + (char) ('A' + random.nextInt(26)) + text(3, random) + text(1 + random.nextInt(longest), random)
                + random.nextInt(10);
        LocalDate expiry = LocalDate.of(2000, 1, 1).plusDays(random.nextInt(27_000));
        LocalDate made = expiry.minusDays(random.nextInt(2000));
        String lot = text(1 + random.nextInt(longest), random);
        String serial = text(1 + random.nextInt(longest), random);
        int quantity = random.nextInt(100_000);
        boolean counted = random.nextBoolean();
        String data = di + "/$$" + (counted ? "9" + String.format("%05d", quantity) : "")
                + DateTimeFormatter.ofPattern(PATTERNS.get(random.nextInt(PATTERNS.size()))).format(expiry) + lot
                + "/S" + serial + DateTimeFormatter.ofPattern("'/16D'yyyyMMdd").format(made);
        return new RandomHibc(data, new ProductCode(Scheme.HIBC, Optional.of(di), Optional.of(lot), Optional.of(serial),
                Optional.of(expiry), Optional.of(made), counted ? Optional.of(quantity) : Optional.empty(),
                Optional.empty(), List.of()));
    }

    static String text(int length, Random random) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < length; i++) {
            text.append(CHARACTERS.charAt(random.nextInt(CHARACTERS.length())));
        }
        return text.toString();
    }
}
