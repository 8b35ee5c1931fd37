"""Readers of glTF and STL files, written from the formats' own descriptions and apart from the product: they complain about what a
viewer or a slicer would stumble over. Python's standard library only.

Sources: glTF 2.0, Khronos, sections 3.6 (accessors), 4.4 (GLB); binary STL: 80 bytes, a count, 50 bytes a triangle (common practice, no source)."""
import collections
import json
import struct

COMPONENTS = {5121: "B", 5123: "H", 5125: "I", 5126: "f"}
COUNTS = {"SCALAR": 1, "VEC2": 2, "VEC3": 3, "VEC4": 4, "MAT4": 16}


def need(truth, text):
    if not truth:
        raise AssertionError(text)


def read_glb(data):
    """{node name: (points, triangles, colour)} in the file's metres, y up; every reference, length and bound checked."""
    magic, version, length = struct.unpack_from("<4sII", data, 0)
    need(magic == b"glTF" and version == 2 and length == len(data), "header")
    chunks, at = [], 12
    while at < length:
        size, kind = struct.unpack_from("<I4s", data, at)
        need(size % 4 == 0 and at + 8 + size <= length, "chunk length")
        chunks.append((kind, data[at + 8:at + 8 + size]))
        at += 8 + size
    need([kind for kind, _ in chunks] == [b"JSON", b"BIN\0"], "chunks")
    doc, binary = json.loads(chunks[0][1]), chunks[1][1]
    need(doc["asset"]["version"] == "2.0", "asset")
    need(len(doc["buffers"]) == 1 and doc["buffers"][0]["byteLength"] <= len(binary) < doc["buffers"][0]["byteLength"] + 4, "buffer")

    def values(index):
        accessor = doc["accessors"][index]
        view = doc["bufferViews"][accessor["bufferView"]]
        need(view["buffer"] == 0 and view.get("byteOffset", 0) + view["byteLength"] <= doc["buffers"][0]["byteLength"], "view")
        letter, width = COMPONENTS[accessor["componentType"]], COUNTS[accessor["type"]]
        size = struct.calcsize("<" + letter) * width
        stride, offset = view.get("byteStride", size), accessor.get("byteOffset", 0)
        need(stride >= size and (offset + view.get("byteOffset", 0)) % struct.calcsize("<" + letter) == 0, "alignment")
        need(offset + stride * (accessor["count"] - 1) + size <= view["byteLength"], "accessor past its view")
        start = view.get("byteOffset", 0) + offset
        list_ = [struct.unpack_from("<%d%s" % (width, letter), binary, start + i * stride) for i in range(accessor["count"])]
        for key, best in (("min", min), ("max", max)):
            if key in accessor:
                for k, bound in enumerate(accessor[key]):
                    need(abs(best(v[k] for v in list_) - bound) <= 1e-6 * max(1.0, abs(bound)), key + " of accessor %d" % index)
        return list_, accessor

    found = {}

    def walk(index, seen):
        need(index not in seen, "nodes go round in a circle")
        node = doc["nodes"][index]
        need(not {"matrix", "translation", "rotation", "scale"} & set(node), "a node that is moved")
        if "mesh" in node:
            points, triangles, colour = [], [], None
            for primitive in doc["meshes"][node["mesh"]]["primitives"]:
                need(primitive.get("mode", 4) == 4, "not triangles")
                position, accessor = values(primitive["attributes"]["POSITION"])
                need("min" in accessor and "max" in accessor, "bounds of the positions")
                indices = [i for i, in values(primitive["indices"])[0]]
                need(len(indices) % 3 == 0 and max(indices) < len(position), "indices")
                triangles += [tuple(len(points) + i for i in indices[k:k + 3]) for k in range(0, len(indices), 3)]
                points += position
                colour = doc["materials"][primitive["material"]]["pbrMetallicRoughness"]["baseColorFactor"]
            need(node["name"] not in found, "two nodes of one name")
            found[node["name"]] = (points, triangles, tuple(colour))
        for child in node.get("children", []):
            walk(child, seen | {index})

    for root in doc["scenes"][doc["scene"]]["nodes"]:
        walk(root, set())
    return found


def read_stl(data):
    """Triangles as triples of points, mm."""
    count, = struct.unpack_from("<I", data, 80)
    need(len(data) == 84 + 50 * count, "length")
    triangles = []
    for i in range(count):
        v = struct.unpack_from("<12f", data, 84 + 50 * i)
        triangles.append((v[3:6], v[6:9], v[9:12]))
    return triangles


def need_closed(triangles):
    """Every side is walked as often one way as the other; points count as one only where they are equal to the last bit."""
    walked = collections.Counter()
    for t in triangles:
        for a, b in ((t[0], t[1]), (t[1], t[2]), (t[2], t[0])):
            if a != b:
                walked[a, b] += 1
                walked[b, a] -= 1
    need(triangles and not any(walked.values()), "%d open sides" % sum(v > 0 for v in walked.values()))


def volume(triangles):
    ox, oy, oz = triangles[0][0]
    six = 0.0
    for t in triangles:
        (ax, ay, az), (bx, by, bz), (cx, cy, cz) = ((x - ox, y - oy, z - oz) for x, y, z in t)
        six += ax * (by * cz - bz * cy) - ay * (bx * cz - bz * cx) + az * (bx * cy - by * cx)
    return six / 6
