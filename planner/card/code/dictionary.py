"""What nearly every code has in it, so that it need not be written: pieces of canonical JSON, the commonest last.

A change here makes codes that older devices cannot read: it needs a new version of the code.
"""

from typing import Final

PIECES: Final = (
    '"clinic_table":{"caution":"","validity":"","edition":"","rows":[[',
    '"axial_length_left_mm":23.5,"axial_length_right_mm":23.5,"pupil_distance_mm":60,',
    '"spectacles_left_d":2.5,"spectacles_right_d":2.5,',
    '"excyclotorsion_down_deg":10,"excyclotorsion_left_deg":5,"excyclotorsion_right_deg":5,',
    '"dvd_left_pd":10,"dvd_right_pd":10,"head_posture":{"chin":"down","chin_deg":10,"tilt":"left","turn":"right"},',
    '{"diagnosis":"thyroid eye disease","eye":"left"},{"diagnosis":"infantile esotropia"},',
    '{"diagnosis":"sixth nerve palsy"},{"diagnosis":"fourth nerve palsy"},{"diagnosis":"sensory deviation"}',
    '"conditions":[{"breaker":"dissociated vertical deviation","presence":"absent"}],"constancy":"intermittent",',
    '"constancy":"constant","ductions":[{"eye":"left","grade":-2,"muscle":"LR"}],',
    '"forced_ductions":[{"eye":"right","muscle":"LR","result":"restricted"},{"eye":"left","muscle":"MR","result":"free"}],',
    '"previous_operations":[{"eye":"left","mm":5,"muscle":"MR","operation":"recess","year":2019},',
    '{"eye":"right","muscle":"LR","operation":"resect"},{"eye":"left","muscle":"LR","operation":"unknown"}],',
    '"technique":{"material":"plastic","position":"frontal plane","prisms":"split"},"method":"krimsky","repeat":2,',
    '"aim":"after patching","combine":["offset-both-mr","recess-both-lr","weaken-both-io"],"overcorrection_pd":5,',
    '"changes":[{"eye":"right","mm":5.5,"muscle":"MR","option":"recess-both-mr"},',
    '{"eye":"left","mm":5,"muscle":"LR","option":"',
    '"anticoagulants":"none","latex":"yes","malignant_hyperthermia_family":"no","latex":"no",',
    '"allergies":"penicillin","allergies":"none known","anticoagulants":"none known",',
    '"versions":[{"eye":"left","grade":2,"muscle":"IO"},{"eye":"right","grade":-1,"muscle":"SO"},',
    '{"eye":"left","grade":1,"muscle":"IO"},{"eye":"right","grade":2,"muscle":"IO"}]},',
    '"acuity_left":"6/12","acuity_right":"6/6","examined_on":"2026-11-2","fixing_eye":"right","fixing_eye":"left",',
    '"condition":"after patching","correction":"without",',
    '{"correction":"with","gaze":"tilt_right","range":"distance","vertical_pd":1},',
    '{"correction":"with","gaze":"up_right","horizontal_pd":30,"range":"distance"},',
    '{"correction":"with","gaze":"down","horizontal_pd":-25,"range":"distance"},',
    '{"correction":"with","gaze":"left","horizontal_pd":25,"range":"distance","vertical_pd":0},',
    '"option":"recess-lr-resect-mr-left","option":"resect-both-lr","option":"recess-both-lr",',
    '{"at":"2026-11-25T09:30:00+01:00","case":{"born_on":"201","examination":{"acuity_left":"6/9",',
    '"acuity_right":"6/6","examined_on":"2026-11-2","fixing_eye":"right","readings":[',
    '{"correction":"with","gaze":"primary","horizontal_pd":40,"range":"distance"},',
    '{"correction":"with","gaze":"primary","horizontal_pd":45,"range":"near"}],"schema":1},',
    '"schema":1,"table":"wright-after-parks"},"engine":"2.0.0","note":"","option":"recess-both-mr",',
    '"patient":{"allergies":"","born_on":"201","full_name":"","hospital_number":"","schema":1,"sex":"female"},',
    '"signer":""}"sex":"male"},"signer":"',
)

DICTIONARY: Final = "".join(PIECES).encode()
