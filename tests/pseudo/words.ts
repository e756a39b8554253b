import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname, relative, resolve } from 'node:path';
import ts from 'typescript';
import { filesIn } from '../helpers/texts';
import { pseudo } from './rule';

/** Methods whose argument is looked for in a text or a list. */
const looksFor = new Set(['includes', 'startsWith', 'endsWith', 'split', 'indexOf', 'normalize']);
const compares = new Set([
  ts.SyntaxKind.EqualsEqualsEqualsToken,
  ts.SyntaxKind.ExclamationEqualsEqualsToken,
  ts.SyntaxKind.InKeyword,
]);

/** Whether a type admits only some fixed texts: then they are ids. */
const isIds = (type: ts.Type): boolean =>
  type.isUnion()
    ? type.types.every((each) => each.flags & ts.TypeFlags.Undefined || isIds(each))
    : type.isStringLiteral() || Boolean(type.flags & (ts.TypeFlags.Index | ts.TypeFlags.Null));

/** Whether a text in the code is for readers: by what stands round it, and by the type wanted there. */
function isForReaders(node: ts.StringLiteralLike | ts.TemplateExpression, types: ts.TypeChecker) {
  const { parent } = node;
  if (
    ts.isImportDeclaration(parent) ||
    ts.isExportDeclaration(parent) ||
    ts.isLiteralTypeNode(parent) ||
    ts.isElementAccessExpression(parent) ||
    ts.isCaseClause(parent) ||
    (ts.isPropertyAssignment(parent) && parent.name === node) ||
    (ts.isBinaryExpression(parent) && compares.has(parent.operatorToken.kind)) ||
    (ts.isCallExpression(parent) && parent.expression.kind === ts.SyntaxKind.ImportKeyword)
  )
    return false;
  if (ts.isCallExpression(parent)) {
    const called = parent.expression;
    if (ts.isPropertyAccessExpression(called) && looksFor.has(called.name.text)) return false;
    const asked = types.getResolvedSignature(parent)?.parameters;
    const name = asked?.[parent.arguments.indexOf(node)]?.name;
    // One that is asked for a fact of a reason is asked for its value too.
    if (name === 'fact' || (name === 'value' && asked?.some((each) => each.name === 'fact')))
      return false;
  }
  for (let above: ts.Node = parent; !ts.isStatement(above); above = above.parent)
    if (ts.isNewExpression(above) && /^Intl\./.test(above.expression.getText())) return false;
  const wanted = types.getContextualType(node);
  if (!wanted) return true;
  const bound = wanted.isTypeParameter() ? (wanted.getConstraint() ?? wanted) : wanted;
  return !isIds(bound);
}

interface Piece {
  readonly from: number;
  readonly to: number;
  readonly text: string;
}

/** The text between two places of the source in the pseudo-language, its escapes left alone. */
const turned = (source: string, from: number, to: number): Piece => ({
  from,
  to,
  text: source
    .slice(from, to)
    .split(/(\\u\{?[0-9A-Fa-f]+\}?|\\.)/)
    .map((part, place) => (place % 2 ? part : pseudo(part)))
    .join(''),
});

function turnFile(file: ts.SourceFile, types: ts.TypeChecker): string {
  const source = file.text;
  const pieces: Piece[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isStringLiteral(node) || ts.isNoSubstitutionTemplateLiteral(node)) {
      if (isForReaders(node, types))
        pieces.push(turned(source, node.getStart(file) + 1, node.end - 1));
    } else if (ts.isTemplateExpression(node) && isForReaders(node, types)) {
      pieces.push(turned(source, node.head.getStart(file) + 1, node.head.end - 2));
      for (const { literal } of node.templateSpans)
        pieces.push(
          turned(
            source,
            literal.getStart(file) + 1,
            literal.end - (ts.isTemplateTail(literal) ? 1 : 2),
          ),
        );
    }
    ts.forEachChild(node, visit);
  };
  visit(file);
  let said = source;
  for (const { from, to, text } of pieces.sort((one, other) => other.from - one.from))
    said = said.slice(0, from) + text + said.slice(to);
  return said;
}

/**
 * Writes the words of English into a folder in the pseudo-language, as a second language would lie
 * beside them: what is an id, a key or a path stays, told by the types of the code.
 * @param to the folder to write
 * @param locale how it writes numbers, dates and lists
 */
export function writeWords(to: string, locale: string): void {
  const folder = resolve('src/lib/words/en');
  const { options } = ts.parseJsonConfigFileContent(
    ts.readConfigFile('tsconfig.json', (path) => ts.sys.readFile(path)).config,
    ts.sys,
    resolve('.'),
  );
  const files = filesIn(folder, '.ts');
  const program = ts.createProgram(files, { ...options, noEmit: true });
  const types = program.getTypeChecker();
  for (const path of files) {
    const file = program.getSourceFile(path);
    if (!file) throw new Error(`${path}: not in the program`);
    const place = resolve(to, relative(folder, path));
    mkdirSync(dirname(place), { recursive: true });
    const text =
      relative(folder, path) === 'language.ts'
        ? turnFile(file, types)
            .replace(/locale: '[^']+'/, `locale: '${locale}'`)
            .replace('longer: 1', 'longer: 1.5')
        : turnFile(file, types);
    writeFileSync(place, text);
  }
}
