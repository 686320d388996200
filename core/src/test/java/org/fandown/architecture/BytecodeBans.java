package org.fandown.architecture;

import com.tngtech.archunit.core.domain.JavaClass;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.FieldVisitor;
import org.objectweb.asm.Handle;
import org.objectweb.asm.Label;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;

/**
 * Finds what only the byte code shows: remainders of doubles, floats, and numbers turned into text
 * by joining or formatting.
 *
 * <p>The remainder of two doubles differs in the browser; floats are not rounded to 32 bits there;
 * the last digit of a double as text can differ; and a format other than {@code %s} depends on the
 * place or fails.
 */
final class BytecodeBans extends ClassVisitor {
    /** Any conversion but a plain {@code %s} and the per cent sign itself. */
    private static final Pattern OTHER_THAN_TEXT = Pattern.compile("%[^s%]");

    private final List<String> problems = new ArrayList<>();
    private String className = "";

    private BytecodeBans() {
        super(Opcodes.ASM9);
    }

    /** Returns one line per problem in the code of this class. */
    static List<String> problemsIn(JavaClass item) {
        BytecodeBans visitor = new BytecodeBans();
        try (InputStream code = item.getSource().orElseThrow().getUri().toURL().openStream()) {
            new ClassReader(code).accept(visitor, 0);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return visitor.problems;
    }

    @Override
    public void visit(
            int version,
            int access,
            String name,
            @Nullable String signature,
            @Nullable String superName,
            String @Nullable [] interfaces) {
        className = name.substring(name.lastIndexOf('/') + 1);
    }

    @Override
    public @Nullable FieldVisitor visitField(
            int access,
            String name,
            String descriptor,
            @Nullable String signature,
            @Nullable Object value) {
        if (isFloat(Type.getType(descriptor))) {
            problems.add(className + "." + name + ": float");
        }
        return null;
    }

    @Override
    public MethodVisitor visitMethod(
            int access,
            String name,
            String descriptor,
            @Nullable String signature,
            String @Nullable [] exceptions) {
        return new CodeScan(className + "." + name);
    }

    private static boolean isFloat(Type type) {
        return type.getSort() == Type.ARRAY
                ? type.getElementType().equals(Type.FLOAT_TYPE)
                : type.equals(Type.FLOAT_TYPE);
    }

    /** Reads the instructions of one method. */
    private final class CodeScan extends MethodVisitor {
        private static final Set<Integer> FLOATS =
                Set.of(
                        Opcodes.I2F,
                        Opcodes.L2F,
                        Opcodes.D2F,
                        Opcodes.F2I,
                        Opcodes.F2L,
                        Opcodes.F2D,
                        Opcodes.FADD,
                        Opcodes.FSUB,
                        Opcodes.FMUL,
                        Opcodes.FDIV,
                        Opcodes.FREM,
                        Opcodes.FNEG,
                        Opcodes.FCMPL,
                        Opcodes.FCMPG,
                        Opcodes.FCONST_0,
                        Opcodes.FCONST_1,
                        Opcodes.FCONST_2,
                        Opcodes.FALOAD,
                        Opcodes.FASTORE,
                        Opcodes.FLOAD,
                        Opcodes.FSTORE,
                        Opcodes.FRETURN);

        private final String where;
        private final List<String> texts = new ArrayList<>();
        private boolean formats;
        private int line;

        private CodeScan(String where) {
            super(Opcodes.ASM9);
            this.where = where;
        }

        @Override
        public void visitLineNumber(int number, Label start) {
            line = number;
        }

        @Override
        public void visitInsn(int opcode) {
            if (opcode == Opcodes.DREM) {
                report("remainder of doubles");
            } else if (FLOATS.contains(opcode)) {
                report("float");
            }
        }

        @Override
        public void visitVarInsn(int opcode, int variable) {
            if (FLOATS.contains(opcode)) {
                report("float");
            }
        }

        @Override
        public void visitLdcInsn(Object value) {
            if (value instanceof String text) {
                texts.add(text);
            } else if (value instanceof Float) {
                report("float");
            }
        }

        @Override
        public void visitMethodInsn(
                int opcode, String owner, String name, String descriptor, boolean isInterface) {
            formats |= owner.equals("java/lang/String") && name.equals("formatted");
        }

        @Override
        public void visitInvokeDynamicInsn(
                String name, String descriptor, Handle bootstrap, Object... arguments) {
            if (bootstrap.getOwner().equals("java/lang/invoke/StringConcatFactory")) {
                Set<Type> types = Set.copyOf(List.of(Type.getArgumentTypes(descriptor)));
                if (types.contains(Type.DOUBLE_TYPE) || types.contains(Type.FLOAT_TYPE)) {
                    report("double joined to a text, use own formatter");
                }
            }
        }

        @Override
        public void visitEnd() {
            if (formats && texts.stream().noneMatch(text -> text.contains("%"))) {
                report("formatted with a format that the method does not show");
            }
            if (formats && texts.stream().anyMatch(t -> OTHER_THAN_TEXT.matcher(t).find())) {
                report("formatted with another conversion than %s");
            }
        }

        private void report(String problem) {
            problems.add(where + " line " + line + ": " + problem);
        }
    }
}
