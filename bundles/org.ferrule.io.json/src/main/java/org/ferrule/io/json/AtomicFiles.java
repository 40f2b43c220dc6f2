/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.io.json;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.AclFileAttributeView;
import java.nio.file.attribute.PosixFileAttributeView;
import java.util.UUID;

/**
 * Writes files so that a reader, a crash or a full disk never sees half of one: to a temporary file in the same folder,
 * forced to disk, then renamed over the former file.
 */
public final class AtomicFiles {

    private static final int MOST_LINKS = 40;

    private AtomicFiles() {
    }

    /**
     * Replaces the content of a file, or creates it. A symbolic link is followed and stays; the permissions of a former
     * file are kept. If anything fails, the former file is as it was and nothing is left beside it.
     *
     * @return whether the folder's entry is known to be on disk too; some file systems cannot tell, and then a power
     *         failure may bring back the former file, whole
     * @throws IOException if the file cannot be written, among others because it is read-only or the folder is missing
     */
    public static boolean write(Path file, byte[] content) throws IOException {
        Path target = followLinks(file);
        if (Files.exists(target) && !Files.isWritable(target)) {
            throw new AccessDeniedException(target.toString(), null, "the file is read-only");
        }
        Path folder = target.toAbsolutePath().getParent();
        Path temporary = folder.resolve("." + target.getFileName() + "." + UUID.randomUUID() + ".tmp");
        try {
            writeForced(temporary, content);
            copyPermissions(target, temporary);
            Files.move(temporary, target, StandardCopyOption.ATOMIC_MOVE);
        } catch (IOException | RuntimeException e) {
            deleteAfter(temporary, e);
            throw e;
        }
        return forceFolder(folder);
    }

    /** A link may lead to a file that does not exist yet. */
    private static Path followLinks(Path file) throws IOException {
        Path target = file;
        for (int links = 0; Files.isSymbolicLink(target); links++) {
            if (links == MOST_LINKS) {
                throw new IOException("too many symbolic links from " + file);
            }
            target = target.resolveSibling(Files.readSymbolicLink(target));
        }
        return target;
    }

    private static void writeForced(Path temporary, byte[] content) throws IOException {
        try (FileChannel channel = FileChannel.open(temporary, StandardOpenOption.WRITE,
                StandardOpenOption.CREATE_NEW)) {
            ByteBuffer buffer = ByteBuffer.wrap(content);
            while (buffer.hasRemaining()) {
                channel.write(buffer);
            }
            channel.force(true);
        }
    }

    private static void copyPermissions(Path from, Path to) throws IOException {
        if (!Files.exists(from, LinkOption.NOFOLLOW_LINKS)) {
            return;
        }
        PosixFileAttributeView posix = Files.getFileAttributeView(from, PosixFileAttributeView.class);
        AclFileAttributeView acl = Files.getFileAttributeView(from, AclFileAttributeView.class);
        if (posix != null) {
            Files.setPosixFilePermissions(to, posix.readAttributes().permissions());
        } else if (acl != null) {
            Files.getFileAttributeView(to, AclFileAttributeView.class).setAcl(acl.getAcl());
        }
    }

    private static void deleteAfter(Path temporary, Exception failure) {
        try {
            Files.deleteIfExists(temporary);
        } catch (IOException e) {
            failure.addSuppressed(e);
        }
    }

    /** The rename has happened: a folder that cannot be opened or forced, as on Windows, takes nothing back. */
    private static boolean forceFolder(Path folder) {
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
            return true;
        } catch (IOException e) {
            return false;
        }
    }
}
