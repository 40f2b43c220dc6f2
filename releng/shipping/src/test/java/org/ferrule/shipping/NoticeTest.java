/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.shipping;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Properties;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NoticeTest {

    @TempDir
    private Path folder;
    private BundleMaker maker;
    private final Properties table = new Properties();

    @BeforeEach
    void emptyFolder() {
        maker = new BundleMaker(folder.resolve("linux/plugins"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "Apache-2.0;link=\"https://www.apache.org/licenses/LICENSE-2.0.txt\" | Apache-2.0",
        "http://www.apache.org/licenses/LICENSE-2.0.txt                       | Apache-2.0",
        "https://opensource.org/license/mit                                   | MIT",
        "MIT                                                                  | MIT",
        "Eclipse Public License - v 2.0;link=\"x\"                          | EPL-2.0",
        "0BSD                                                                 | 0BSD" })
    void namesTheLicenceOfTheManifest(String header, String expected) throws IOException {
        assertEquals(expected, new Licences(table).of(maker.bundle("lib", "1.2.3", header)));
    }

    @Test
    void prefersTheTable() throws IOException {
        table.setProperty("lib", "Unicode-3.0");
        assertEquals("Unicode-3.0", new Licences(table).of(maker.bundle("lib", "1.2.3", "MIT")));
    }

    @Test
    void rejectsBundleWithoutLicence() throws IOException {
        Bundle bundle = maker.bundle("lib", "1.2.3", null);
        ShippingException e = assertThrows(ShippingException.class, () -> new Licences(table).of(bundle));
        assertTrue(e.getMessage().contains("lib_1.2.3.jar"), e.getMessage());
    }

    @Test
    void rejectsUnknownWording() throws IOException {
        Bundle bundle = maker.bundle("lib", "1.2.3", "ask the author");
        assertThrows(ShippingException.class, () -> new Licences(table).of(bundle));
    }

    @Test
    void listsEachThirdPartyBundleOnceWithoutQualifier() throws IOException {
        Bundle lib = maker.bundle("lib", "1.2.3.v2026", "MIT");
        String text = new Notice(new Licences(table)).of(List.of(lib, lib, maker.bundle("org.ferrule.x", "1", null)));
        assertTrue(text.endsWith("\n\nlib  1.2.3  MIT\n"), text);
        assertFalse(text.contains("org.ferrule"), text);
    }

    @Test
    void checkFailsWhenTheNoticeIsOutOfDate() throws IOException {
        maker.jar("lib", "1.2.3", "MIT");
        Path notice = folder.resolve("NOTICE");
        Path licences = Files.createFile(folder.resolve("licences.properties"));
        Shipping.main("notice", "write", notice.toString(), licences.toString(), folder.toString());
        Shipping.main("notice", "check", notice.toString(), licences.toString(), folder.toString());
        maker.jar("other", "4.5.6", "MIT");
        assertThrows(ShippingException.class, () -> Shipping.main("notice", "check", notice.toString(),
                licences.toString(), folder.toString()));
    }
}
