"""What the oracle scripts share: they write their fixture, or with --check compare with the one that is stored."""
import json
import sys


def rounded(value, digits):
    if isinstance(value, float):
        return float(f'{value:.{digits}g}')
    if isinstance(value, dict):
        return {key: rounded(inner, digits) for key, inner in value.items()}
    return [rounded(inner, digits) for inner in value] if isinstance(value, list) else value


def differences(now, stored, relative, absolute, path=''):
    if isinstance(now, dict):
        return [d for key in now for d in differences(now[key], stored[key], relative, absolute, f'{path}/{key}')]
    if isinstance(now, list):
        return [d for i, (x, y) in enumerate(zip(now, stored, strict=True)) for d in differences(x, y, relative, absolute, f'{path}/{i}')]
    if isinstance(now, float) and isinstance(stored, (int, float)):
        return [] if abs(now - stored) <= relative * max(abs(now), abs(stored)) + absolute else [f'{path}: {now} now, {stored} in the file']
    return [] if now == stored else [f'{path}: {now} now, {stored} in the file']


def store(found, fixture, libraries, relative, absolute, **layout):
    """fixture: a Path; libraries: who says so, in words; layout: keywords of json.dumps."""
    if '--check' in sys.argv:
        wrong = differences(found, json.loads(fixture.read_text()), relative, absolute)
        print('\n'.join(wrong) or f'{fixture.name} is what {libraries}')
        sys.exit(1 if wrong else 0)
    fixture.write_text(json.dumps(found, **layout) + '\n')
