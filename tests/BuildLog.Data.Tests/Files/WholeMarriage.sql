PRAGMA application_id = 1112305511;
BEGIN TRANSACTION;
CREATE TABLE IF NOT EXISTS "__EFMigrationsLock" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK___EFMigrationsLock" PRIMARY KEY,
    "Timestamp" TEXT NOT NULL
);
CREATE TABLE IF NOT EXISTS "__EFMigrationsHistory" (
    "MigrationId" TEXT NOT NULL CONSTRAINT "PK___EFMigrationsHistory" PRIMARY KEY,
    "ProductVersion" TEXT NOT NULL
) STRICT;
INSERT INTO __EFMigrationsHistory VALUES('20261125180654_FirstRecord','10.0.15');
INSERT INTO __EFMigrationsHistory VALUES('20261125193628_WholeMarriage','10.0.15');
CREATE TABLE IF NOT EXISTS "Gears" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_Gears" PRIMARY KEY AUTOINCREMENT,
    "TransmissionId" INTEGER NOT NULL,
    "Ordinal" INTEGER NOT NULL,
    "Name" TEXT NOT NULL,
    "RatioSi" REAL NOT NULL,
    "RatioSource" TEXT NOT NULL,
    "RatioText" TEXT NOT NULL,
    "RatioUnit" TEXT NOT NULL,
    CONSTRAINT "CK_Gears_Name" CHECK (length(trim("Name")) > 0),
    CONSTRAINT "CK_Gears_Ordinal" CHECK ("Ordinal" >= 1),
    CONSTRAINT "CK_Gears_Ratio" CHECK (("RatioSi" IS NULL) + ("RatioUnit" IS NULL) + ("RatioText" IS NULL) + ("RatioSource" IS NULL) IN (0, 4)),
    CONSTRAINT "CK_Gears_RatioSi" CHECK ("RatioSi" BETWEEN 0.3 AND 20.0),
    CONSTRAINT "CK_Gears_RatioSource" CHECK ("RatioSource" IN ('TeethCounted', 'Measured', 'MakersData', 'Tag', 'OwnersWord', 'Assumed')),
    CONSTRAINT "FK_Gears_Components_TransmissionId" FOREIGN KEY ("TransmissionId") REFERENCES "Components" ("Id")
) STRICT;
INSERT INTO Gears VALUES(1,2,1,'1',3.5400000000000000355,'MakersData','3.54','');
INSERT INTO Gears VALUES(2,2,2,'2',2.1200000000000001065,'MakersData','2.12','');
INSERT INTO Gears VALUES(3,2,3,'3',1.3799999999999998934,'MakersData','1.38','');
INSERT INTO Gears VALUES(4,2,4,'4',1.0,'MakersData','1.00','');
INSERT INTO Gears VALUES(5,8,1,'1',3.4100000000000001421,'MakersData','3.41','');
INSERT INTO Gears VALUES(6,8,2,'2',2.0,'MakersData','2.00','');
INSERT INTO Gears VALUES(7,8,3,'3',1.3700000000000001065,'MakersData','1.37','');
INSERT INTO Gears VALUES(8,8,4,'4',1.0,'MakersData','1.00','');
INSERT INTO Gears VALUES(9,15,1,'1',3.5400000000000000355,'MakersData','3.54','');
INSERT INTO Gears VALUES(10,15,2,'2',2.1200000000000001065,'MakersData','2.12','');
INSERT INTO Gears VALUES(11,15,3,'3',1.3799999999999998934,'MakersData','1.38','');
INSERT INTO Gears VALUES(12,15,4,'4',1.0,'MakersData','1.00','');
INSERT INTO Gears VALUES(13,16,1,'1',3.3199999999999998401,'MakersData','3.32','');
INSERT INTO Gears VALUES(14,16,2,'2',2.0499999999999998223,'MakersData','2.05','');
INSERT INTO Gears VALUES(15,16,3,'3',1.3799999999999998934,'MakersData','1.38','');
INSERT INTO Gears VALUES(16,16,4,'4',1.0,'MakersData','1.00','');
INSERT INTO Gears VALUES(17,16,5,'5',0.81000000000000005329,'MakersData','0.81','');
INSERT INTO Gears VALUES(18,22,1,'1',2.9799999999999999822,'Tag','2.98','');
INSERT INTO Gears VALUES(19,22,2,'2',1.9399999999999999467,'Tag','1.94','');
INSERT INTO Gears VALUES(20,22,3,'3',1.3400000000000000799,'Tag','1.34','');
INSERT INTO Gears VALUES(21,22,4,'4',1.0,'Tag','1.00','');
INSERT INTO Gears VALUES(22,26,1,'1',4.0499999999999998223,'MakersData','4.05','');
INSERT INTO Gears VALUES(23,26,2,'2',2.2200000000000001953,'MakersData','2.22','');
INSERT INTO Gears VALUES(24,26,3,'3',1.4199999999999999289,'MakersData','1.42','');
INSERT INTO Gears VALUES(25,26,4,'4',1.0,'MakersData','1.00','');
INSERT INTO Gears VALUES(26,34,1,'1',3.5,'OwnersWord','3.5','');
INSERT INTO Gears VALUES(27,34,2,'2',2.1000000000000000888,'OwnersWord','2.1','');
INSERT INTO Gears VALUES(28,34,3,'3',1.3999999999999999111,'OwnersWord','1.4','');
INSERT INTO Gears VALUES(29,34,4,'4',1.0,'OwnersWord','1.0','');
CREATE TABLE IF NOT EXISTS "Sessions" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_Sessions" PRIMARY KEY AUTOINCREMENT,
    "Date" TEXT NOT NULL,
    "Helper" TEXT NOT NULL,
    "Conditions" TEXT NOT NULL,
    "Notes" TEXT NOT NULL,
    "ComponentId" INTEGER NOT NULL,
    "VehicleId" INTEGER NULL,
    "Method" TEXT NOT NULL,
    "Loaded" INTEGER NULL,
    "Construction" TEXT NULL,
    "Tape" TEXT NULL,
    "Align" TEXT NULL,
    "Pressure" TEXT NULL,
    "Wheels" TEXT NULL,
    "ReadTo" TEXT NULL,
    "Hub" TEXT NULL,
    "Uid" TEXT NOT NULL,
    "Version" INTEGER NOT NULL,
    CONSTRAINT "CK_Sessions_Construction" CHECK ("Construction" IN ('Radial', 'Bias')),
    CONSTRAINT "CK_Sessions_Date" CHECK ("Date" IS date("Date")),
    CONSTRAINT "CK_Sessions_Method" CHECK ("Method" IN ('turn count', 'roll-out')),
    CONSTRAINT "CK_Sessions_roll-out" CHECK ("Method" <> 'roll-out' OR ("Loaded" IS NOT NULL AND "Construction" IS NOT NULL AND "Tape" IS NOT NULL AND "Align" IS NOT NULL AND "Pressure" IS NOT NULL)),
    CONSTRAINT "CK_Sessions_turn_count" CHECK ("Method" <> 'turn count' OR ("Wheels" IS NOT NULL AND "ReadTo" IS NOT NULL AND "Align" IS NOT NULL AND "Hub" IS NOT NULL)),
    CONSTRAINT "CK_Sessions_Wheels" CHECK ("Wheels" IN ('OneHeld', 'Together', 'Each')),
    CONSTRAINT "FK_Sessions_Components_ComponentId" FOREIGN KEY ("ComponentId") REFERENCES "Components" ("Id") ON DELETE RESTRICT,
    CONSTRAINT "FK_Sessions_Vehicles_VehicleId" FOREIGN KEY ("VehicleId") REFERENCES "Vehicles" ("Id") ON DELETE RESTRICT
) STRICT;
INSERT INTO Sessions VALUES(1,'2024-06-01','Piet Arlow','shed floor, level, driver aboard','',6,1,'roll-out',1,'Radial','2 mm','0.01','2.4 bar',NULL,NULL,NULL,'01A21492-2074-757A-B5A6-4CF9D9A71A98',0);
INSERT INTO Sessions VALUES(2,'2024-10-26','Piet Arlow','on stands, left wheel held, chalk on the flange','Done because the engine was far too busy on the first drive.',4,1,'turn count',NULL,NULL,NULL,'0.02',NULL,'OneHeld','0.25','','01A21492-2118-7F1F-8E1C-9540D2A482DA',0);
INSERT INTO Sessions VALUES(3,'2024-04-06','','loose wheel along the bench rail','',13,NULL,'roll-out',0,'Bias','2 mm','0.01','26 psi',NULL,NULL,NULL,'01A21492-2213-7FA8-B696-436630BA8280',0);
INSERT INTO Sessions VALUES(4,'2024-06-16','Rufus Keel','rolled along the yard, both wheels on the ground','',11,2,'turn count',NULL,NULL,NULL,'0.02',NULL,'Together','0.25','','01A21492-2225-7E29-B2FC-2DEA853A6E3A',0);
INSERT INTO Sessions VALUES(5,'2024-06-16','Rufus Keel','same run along the yard','',13,2,'roll-out',1,'Bias','2 mm','0.01','26 psi',NULL,NULL,NULL,'01A21492-222C-7317-BB6A-125D5FA64EAD',0);
INSERT INTO Sessions VALUES(6,'2024-05-04','Dorrit Ames','level car park, half a tank, driver aboard','',20,3,'roll-out',1,'Radial','2 mm','0.01','2.2 bar',NULL,NULL,NULL,'01A21492-22F9-7883-989A-E1DEFFF54B6F',0);
INSERT INTO Sessions VALUES(7,'2024-11-09','','alone, three turns before the light went','',23,4,'turn count',NULL,NULL,NULL,'0.02',NULL,'OneHeld','0.25','','01A21492-2343-741E-81E0-CB1F7B75AD53',0);
INSERT INTO Sessions VALUES(8,'2024-11-16','Bastian Orme','shed floor, shell without glass yet','',24,4,'roll-out',1,'Radial','2 mm','0.01','2.0 bar',NULL,NULL,NULL,'01A21492-2349-7240-976D-12ADFCF1A403',0);
INSERT INTO Sessions VALUES(9,'2024-05-11','','one loose wheel along the shed floor','',32,NULL,'roll-out',0,'Radial','2 mm','0.01','3.5 bar',NULL,NULL,NULL,'01A21492-23CD-7E84-8153-F475FCC0ACE0',0);
INSERT INTO Sessions VALUES(10,'2024-10-06','Ilse Marrick','transfer case in two-wheel drive, front on stands','',31,5,'turn count',NULL,NULL,NULL,'0.02',NULL,'OneHeld','0.25','','01A21492-23E9-735A-9DF4-B3814F59660A',0);
CREATE TABLE IF NOT EXISTS "Readings" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_Readings" PRIMARY KEY AUTOINCREMENT,
    "SessionId" INTEGER NOT NULL,
    "Ordinal" INTEGER NOT NULL,
    "Text" TEXT NOT NULL,
    CONSTRAINT "CK_Readings_Ordinal" CHECK ("Ordinal" >= 1),
    CONSTRAINT "CK_Readings_Text" CHECK (length(trim("Text")) > 0),
    CONSTRAINT "FK_Readings_Sessions_SessionId" FOREIGN KEY ("SessionId") REFERENCES "Sessions" ("Id")
) STRICT;
INSERT INTO Readings VALUES(1,1,1,'1:2238mm');
INSERT INTO Readings VALUES(2,1,2,'3:6 715 mm');
INSERT INTO Readings VALUES(3,1,3,'5:11.19 m');
INSERT INTO Readings VALUES(4,2,1,'10:23.7');
INSERT INTO Readings VALUES(5,2,2,'10:23 3/4');
INSERT INTO Readings VALUES(6,2,3,'10:23 3/4');
INSERT INTO Readings VALUES(7,3,1,'1:2028mm');
INSERT INTO Readings VALUES(8,3,2,'2:4057mm');
INSERT INTO Readings VALUES(9,4,1,'10:39');
INSERT INTO Readings VALUES(10,4,2,'20:78');
INSERT INTO Readings VALUES(11,5,1,'2:12 ft 8 in');
INSERT INTO Readings VALUES(12,5,2,'4:25 ft 4 in');
INSERT INTO Readings VALUES(13,5,3,'6:38 ft');
INSERT INTO Readings VALUES(14,6,1,'1:1936mm');
INSERT INTO Readings VALUES(15,6,2,'3:5807 mm');
INSERT INTO Readings VALUES(16,6,3,'5:9.68 m');
INSERT INTO Readings VALUES(17,7,1,'3:5 1/4');
INSERT INTO Readings VALUES(18,8,1,'1:1876mm');
INSERT INTO Readings VALUES(19,8,2,'2:3751mm');
INSERT INTO Readings VALUES(20,8,3,'4:7.503 m');
INSERT INTO Readings VALUES(21,9,1,'1:2531mm');
INSERT INTO Readings VALUES(22,9,2,'3:7596mm');
INSERT INTO Readings VALUES(23,10,1,'10:20 1/2');
INSERT INTO Readings VALUES(24,10,2,'20:41');
CREATE TABLE IF NOT EXISTS "ShaftPieces" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_ShaftPieces" PRIMARY KEY AUTOINCREMENT,
    "PropshaftId" INTEGER NOT NULL,
    "Ordinal" INTEGER NOT NULL,
    "Yokes" TEXT NULL,
    "LengthSi" REAL NULL,
    "LengthSource" TEXT NULL,
    "LengthText" TEXT NULL,
    "LengthUnit" TEXT NULL,
    "OuterSi" REAL NULL,
    "OuterSource" TEXT NULL,
    "OuterText" TEXT NULL,
    "OuterUnit" TEXT NULL,
    "PlanSi" REAL NULL,
    "PlanSource" TEXT NULL,
    "PlanText" TEXT NULL,
    "PlanUnit" TEXT NULL,
    "SideSi" REAL NULL,
    "SideSource" TEXT NULL,
    "SideText" TEXT NULL,
    "SideUnit" TEXT NULL,
    "WallSi" REAL NULL,
    "WallSource" TEXT NULL,
    "WallText" TEXT NULL,
    "WallUnit" TEXT NULL,
    CONSTRAINT "CK_ShaftPieces_Length" CHECK (("LengthSi" IS NULL) + ("LengthUnit" IS NULL) + ("LengthText" IS NULL) + ("LengthSource" IS NULL) IN (0, 4)),
    CONSTRAINT "CK_ShaftPieces_LengthSi" CHECK ("LengthSi" BETWEEN 0.05 AND 4.0),
    CONSTRAINT "CK_ShaftPieces_LengthSource" CHECK ("LengthSource" IN ('TeethCounted', 'Measured', 'MakersData', 'Tag', 'OwnersWord', 'Assumed')),
    CONSTRAINT "CK_ShaftPieces_Ordinal" CHECK ("Ordinal" BETWEEN 1 AND 3),
    CONSTRAINT "CK_ShaftPieces_Outer" CHECK (("OuterSi" IS NULL) + ("OuterUnit" IS NULL) + ("OuterText" IS NULL) + ("OuterSource" IS NULL) IN (0, 4)),
    CONSTRAINT "CK_ShaftPieces_OuterSi" CHECK ("OuterSi" BETWEEN 0.005 AND 0.3),
    CONSTRAINT "CK_ShaftPieces_OuterSource" CHECK ("OuterSource" IN ('TeethCounted', 'Measured', 'MakersData', 'Tag', 'OwnersWord', 'Assumed')),
    CONSTRAINT "CK_ShaftPieces_Plan" CHECK (("PlanSi" IS NULL) + ("PlanUnit" IS NULL) + ("PlanText" IS NULL) + ("PlanSource" IS NULL) IN (0, 4)),
    CONSTRAINT "CK_ShaftPieces_PlanSi" CHECK ("PlanSi" BETWEEN -0.7853982 AND 0.7853982),
    CONSTRAINT "CK_ShaftPieces_PlanSource" CHECK ("PlanSource" IN ('TeethCounted', 'Measured', 'MakersData', 'Tag', 'OwnersWord', 'Assumed')),
    CONSTRAINT "CK_ShaftPieces_Side" CHECK (("SideSi" IS NULL) + ("SideUnit" IS NULL) + ("SideText" IS NULL) + ("SideSource" IS NULL) IN (0, 4)),
    CONSTRAINT "CK_ShaftPieces_SideSi" CHECK ("SideSi" BETWEEN -0.7853982 AND 0.7853982),
    CONSTRAINT "CK_ShaftPieces_SideSource" CHECK ("SideSource" IN ('TeethCounted', 'Measured', 'MakersData', 'Tag', 'OwnersWord', 'Assumed')),
    CONSTRAINT "CK_ShaftPieces_Wall" CHECK (("WallSi" IS NULL) + ("WallUnit" IS NULL) + ("WallText" IS NULL) + ("WallSource" IS NULL) IN (0, 4)),
    CONSTRAINT "CK_ShaftPieces_WallSi" CHECK ("WallSi" BETWEEN 0.0002 AND 0.15),
    CONSTRAINT "CK_ShaftPieces_WallSource" CHECK ("WallSource" IN ('TeethCounted', 'Measured', 'MakersData', 'Tag', 'OwnersWord', 'Assumed')),
    CONSTRAINT "CK_ShaftPieces_Yokes" CHECK ("Yokes" IN ('InLine', 'QuarterTurn')),
    CONSTRAINT "FK_ShaftPieces_Components_PropshaftId" FOREIGN KEY ("PropshaftId") REFERENCES "Components" ("Id")
) STRICT;
INSERT INTO ShaftPieces VALUES(1,12,1,'InLine',1.2399999999999999911,'Measured','1240 mm','mm',0.076200000000000003841,'Measured','76.2 mm','mm',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,0.0021000000000000003039,'Measured','2.1 mm','mm');
CREATE TABLE IF NOT EXISTS "Specs" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_Specs" PRIMARY KEY AUTOINCREMENT,
    "ComponentId" INTEGER NULL,
    "VehicleId" INTEGER NULL,
    "Spec" TEXT NOT NULL,
    "NumberSi" REAL NOT NULL,
    "NumberSource" TEXT NOT NULL,
    "NumberText" TEXT NOT NULL,
    "NumberUnit" TEXT NOT NULL,
    CONSTRAINT "CK_Specs_Altitude" CHECK ("Spec" <> 'Altitude' OR "NumberSi" BETWEEN -500.0 AND 6000.0),
    CONSTRAINT "CK_Specs_Bore" CHECK ("Spec" <> 'Bore' OR "NumberSi" BETWEEN 0.03 AND 0.4),
    CONSTRAINT "CK_Specs_Bump" CHECK ("Spec" <> 'Bump' OR "NumberSi" BETWEEN 0.0 AND 1.0),
    CONSTRAINT "CK_Specs_Correction" CHECK ("Spec" <> 'Correction' OR "NumberSi" BETWEEN 0.01 AND 100.0),
    CONSTRAINT "CK_Specs_DragArea" CHECK ("Spec" <> 'DragArea' OR "NumberSi" BETWEEN 0.2 AND 12.0),
    CONSTRAINT "CK_Specs_DrivenShare" CHECK ("Spec" <> 'DrivenShare' OR "NumberSi" BETWEEN 0.05 AND 1.0),
    CONSTRAINT "CK_Specs_Droop" CHECK ("Spec" <> 'Droop' OR "NumberSi" BETWEEN 0.0 AND 1.0),
    CONSTRAINT "CK_Specs_FrontAxleMass" CHECK ("Spec" <> 'FrontAxleMass' OR "NumberSi" BETWEEN 20.0 AND 40000.0),
    CONSTRAINT "CK_Specs_HubFaces" CHECK ("Spec" <> 'HubFaces' OR "NumberSi" BETWEEN 0.6 AND 3.0),
    CONSTRAINT "CK_Specs_JointRating" CHECK ("Spec" <> 'JointRating' OR "NumberSi" BETWEEN 10.0 AND 100000.0),
    CONSTRAINT "CK_Specs_LoadedRadius" CHECK ("Spec" <> 'LoadedRadius' OR "NumberSi" BETWEEN 0.1 AND 1.0),
    CONSTRAINT "CK_Specs_LowestPull" CHECK ("Spec" <> 'LowestPull' OR "NumberSi" BETWEEN 0.0 AND 1000.0),
    CONSTRAINT "CK_Specs_Mass" CHECK ("Spec" <> 'Mass' OR "NumberSi" BETWEEN 100.0 AND 60000.0),
    CONSTRAINT "CK_Specs_Number" CHECK (("NumberSi" IS NULL) + ("NumberUnit" IS NULL) + ("NumberText" IS NULL) + ("NumberSource" IS NULL) IN (0, 4)),
    CONSTRAINT "CK_Specs_NumberSi" CHECK ("NumberSi" BETWEEN -1.0 AND 2000000.0),
    CONSTRAINT "CK_Specs_NumberSource" CHECK ("NumberSource" IN ('TeethCounted', 'Measured', 'MakersData', 'Tag', 'OwnersWord', 'Assumed')),
    CONSTRAINT "CK_Specs_Offset" CHECK ("Spec" <> 'Offset' OR "NumberSi" BETWEEN -0.2 AND 0.2),
    CONSTRAINT "CK_Specs_OutputPlan" CHECK ("Spec" <> 'OutputPlan' OR "NumberSi" BETWEEN -0.7853982 AND 0.7853982),
    CONSTRAINT "CK_Specs_OutputSide" CHECK ("Spec" <> 'OutputSide' OR "NumberSi" BETWEEN -0.7853982 AND 0.7853982),
    CONSTRAINT "CK_Specs_Owner" CHECK (("ComponentId" IS NULL) + ("VehicleId" IS NULL) = 1),
    CONSTRAINT "CK_Specs_PeakPower" CHECK ("Spec" <> 'PeakPower' OR "NumberSi" BETWEEN 500.0 AND 2000000.0),
    CONSTRAINT "CK_Specs_PeakPowerAt" CHECK ("Spec" <> 'PeakPowerAt' OR "NumberSi" BETWEEN 0.0 AND 1000.0),
    CONSTRAINT "CK_Specs_PeakTorque" CHECK ("Spec" <> 'PeakTorque' OR "NumberSi" BETWEEN 1.0 AND 5000.0),
    CONSTRAINT "CK_Specs_PeakTorqueAt" CHECK ("Spec" <> 'PeakTorqueAt' OR "NumberSi" BETWEEN 0.0 AND 1000.0),
    CONSTRAINT "CK_Specs_PinionPlan" CHECK ("Spec" <> 'PinionPlan' OR "NumberSi" BETWEEN -0.7853982 AND 0.7853982),
    CONSTRAINT "CK_Specs_PinionSide" CHECK ("Spec" <> 'PinionSide' OR "NumberSi" BETWEEN -0.7853982 AND 0.7853982),
    CONSTRAINT "CK_Specs_PitchCircle" CHECK ("Spec" <> 'PitchCircle' OR "NumberSi" BETWEEN 0.05 AND 0.4),
    CONSTRAINT "CK_Specs_PulsesPerTurn" CHECK ("Spec" <> 'PulsesPerTurn' OR "NumberSi" BETWEEN 0.01 AND 1000.0),
    CONSTRAINT "CK_Specs_RearAxleMass" CHECK ("Spec" <> 'RearAxleMass' OR "NumberSi" BETWEEN 20.0 AND 40000.0),
    CONSTRAINT "CK_Specs_RimWidth" CHECK ("Spec" <> 'RimWidth' OR "NumberSi" BETWEEN 0.05 AND 0.6),
    CONSTRAINT "CK_Specs_RollingResistance" CHECK ("Spec" <> 'RollingResistance' OR "NumberSi" BETWEEN 0.003 AND 0.4),
    CONSTRAINT "CK_Specs_SlipOut" CHECK ("Spec" <> 'SlipOut' OR "NumberSi" BETWEEN 0.0 AND 1.0),
    CONSTRAINT "CK_Specs_SlipStroke" CHECK ("Spec" <> 'SlipStroke' OR "NumberSi" BETWEEN 0.0 AND 1.0),
    CONSTRAINT "CK_Specs_Spec" CHECK ("Spec" IN ('TorquePoints', 'PeakTorque', 'PeakTorqueAt', 'PeakPower', 'PeakPowerAt', 'LowestPull', 'StallSpeed', 'StallTorqueRatio', 'TorqueRating', 'PitchCircle', 'Bore', 'HubFaces', 'Droop', 'Bump', 'LoadedRadius', 'RimWidth', 'Offset', 'JointRating', 'SlipStroke', 'SlipOut', 'OutputSide', 'OutputPlan', 'PinionSide', 'PinionPlan', 'TurnsWanted', 'PulsesPerTurn', 'Correction', 'Mass', 'FrontAxleMass', 'RearAxleMass', 'DragArea', 'RollingResistance', 'DrivenShare', 'Altitude')),
    CONSTRAINT "CK_Specs_StallSpeed" CHECK ("Spec" <> 'StallSpeed' OR "NumberSi" BETWEEN 0.0 AND 1000.0),
    CONSTRAINT "CK_Specs_StallTorqueRatio" CHECK ("Spec" <> 'StallTorqueRatio' OR "NumberSi" BETWEEN 1.0 AND 5.0),
    CONSTRAINT "CK_Specs_TorquePoints" CHECK ("Spec" <> 'TorquePoints' OR "NumberSi" BETWEEN 0.0 AND 5000.0),
    CONSTRAINT "CK_Specs_TorqueRating" CHECK ("Spec" <> 'TorqueRating' OR "NumberSi" BETWEEN 10.0 AND 100000.0),
    CONSTRAINT "CK_Specs_TurnsWanted" CHECK ("Spec" <> 'TurnsWanted' OR "NumberSi" BETWEEN 50.0 AND 1000000.0),
    CONSTRAINT "FK_Specs_Components_ComponentId" FOREIGN KEY ("ComponentId") REFERENCES "Components" ("Id"),
    CONSTRAINT "FK_Specs_Vehicles_VehicleId" FOREIGN KEY ("VehicleId") REFERENCES "Vehicles" ("Id")
) STRICT;
INSERT INTO Specs VALUES(1,19,NULL,'TurnsWanted',870.0,'Tag','870','');
CREATE TABLE IF NOT EXISTS "Goals" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_Goals" PRIMARY KEY AUTOINCREMENT,
    "EngineSpeed" TEXT NULL,
    "EngineSpeedSi" REAL NULL,
    "Gear" TEXT NULL,
    "Gradient" TEXT NULL,
    "Kind" TEXT NOT NULL,
    "Limit" TEXT NULL,
    "Limited" TEXT NULL,
    "Speed" TEXT NULL,
    "SpeedSi" REAL NULL,
    "Tolerance" TEXT NULL,
    "Uid" TEXT NOT NULL,
    "VehicleId" INTEGER NOT NULL,
    "Version" INTEGER NOT NULL,
    CONSTRAINT "CK_Goals_cruise" CHECK ("Kind" <> 'cruise' OR ("Speed" IS NOT NULL AND "EngineSpeed" IS NOT NULL AND "Tolerance" IS NOT NULL AND "Gear" IS NOT NULL AND "SpeedSi" IS NOT NULL AND "EngineSpeedSi" IS NOT NULL)),
    CONSTRAINT "CK_Goals_EngineSpeedSi" CHECK ("EngineSpeedSi" > 0 AND "EngineSpeedSi" < 1000),
    CONSTRAINT "CK_Goals_hill" CHECK ("Kind" <> 'hill' OR ("Gradient" IS NOT NULL AND "Speed" IS NOT NULL AND "Gear" IS NOT NULL)),
    CONSTRAINT "CK_Goals_Kind" CHECK ("Kind" IN ('cruise', 'hill', 'limit')),
    CONSTRAINT "CK_Goals_limit" CHECK ("Kind" <> 'limit' OR ("Limited" IS NOT NULL AND "Limit" IS NOT NULL)),
    CONSTRAINT "CK_Goals_Limited" CHECK ("Limited" IN ('HillStart', 'TopSpeed', 'OverallLow', 'TyreDiameter', 'TyreWidth', 'Track')),
    CONSTRAINT "CK_Goals_SpeedSi" CHECK ("SpeedSi" > 0 AND "SpeedSi" < 1000),
    CONSTRAINT "FK_Goals_Vehicles_VehicleId" FOREIGN KEY ("VehicleId") REFERENCES "Vehicles" ("Id") ON DELETE RESTRICT
) STRICT;
INSERT INTO Goals VALUES(1,'2500 rpm',41.666666666666664297,'',NULL,'cruise',NULL,NULL,'100 km/h',27.777777777777778566,'100 rpm','01A21492-1CAA-7242-8B06-8FD08700B685',1,0);
INSERT INTO Goals VALUES(2,'2550 rpm',42.5,'',NULL,'cruise',NULL,NULL,'60 mph',26.822399999999998244,'','01A21492-2152-7EFE-8EFF-051873CB46E4',2,0);
INSERT INTO Goals VALUES(3,'2900 rpm',48.333333333333335702,'',NULL,'cruise',NULL,NULL,'70 mph',31.292799999999999726,'','01A21492-2245-78A1-BA3E-98CB5BF8936D',3,0);
INSERT INTO Goals VALUES(4,'3000 rpm',50.0,'',NULL,'cruise',NULL,NULL,'100 km/h',27.777777777777778566,'150 rpm','01A21492-2311-7FFF-B1A7-633D9D816787',4,0);
INSERT INTO Goals VALUES(5,'2700 rpm',45.0,'',NULL,'cruise',NULL,NULL,'90 km/h',25.0,'at most','01A21492-2354-715A-A60B-422921D709C9',5,0);
INSERT INTO Goals VALUES(6,'2600 rpm',43.333333333333335702,'',NULL,'cruise',NULL,NULL,'95 km/h',26.388888888888889284,'','01A21492-23F3-7045-947D-5D7BE8EFAC04',6,0);
CREATE TABLE IF NOT EXISTS "Fitments" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_Fitments" PRIMARY KEY AUTOINCREMENT,
    "ComponentId" INTEGER NOT NULL,
    "FromDate" TEXT NOT NULL,
    "FromOdometerMetres" REAL NULL,
    "FromOdometerText" TEXT NULL,
    "FromOdometerUnit" TEXT NULL,
    "FromOrder" INTEGER NOT NULL,
    "Position" TEXT NOT NULL,
    "Reason" TEXT NOT NULL,
    "ReasonOff" TEXT NOT NULL,
    "ToDate" TEXT NULL,
    "ToOdometerMetres" REAL NULL,
    "ToOdometerText" TEXT NULL,
    "ToOdometerUnit" TEXT NULL,
    "ToOrder" INTEGER NULL,
    "Uid" TEXT NOT NULL,
    "VehicleId" INTEGER NOT NULL,
    "Version" INTEGER NOT NULL,
    CONSTRAINT "CK_Fitments_Forward" CHECK (("FromDate", "FromOrder") < ("ToDate", "ToOrder")),
    CONSTRAINT "CK_Fitments_FromDate" CHECK ("FromDate" IS date("FromDate")),
    CONSTRAINT "CK_Fitments_FromOdometer" CHECK (("FromOdometerMetres" IS NULL) + ("FromOdometerUnit" IS NULL) + ("FromOdometerText" IS NULL) IN (0, 3)),
    CONSTRAINT "CK_Fitments_FromOdometerMetres" CHECK ("FromOdometerMetres" BETWEEN 0 AND 10000000000),
    CONSTRAINT "CK_Fitments_Off" CHECK (("ToDate" IS NULL) + ("ToOrder" IS NULL) IN (0, 2)),
    CONSTRAINT "CK_Fitments_Position" CHECK ("Position" IN ('Engine', 'Transmission', 'Overdrive', 'TransferCase', 'Propshaft', 'FrontPropshaft', 'RearAxle', 'FrontAxle', 'Tyres', 'Speedometer')),
    CONSTRAINT "CK_Fitments_ToDate" CHECK ("ToDate" IS date("ToDate")),
    CONSTRAINT "CK_Fitments_ToOdometer" CHECK (("ToOdometerMetres" IS NULL) + ("ToOdometerUnit" IS NULL) + ("ToOdometerText" IS NULL) IN (0, 3)),
    CONSTRAINT "CK_Fitments_ToOdometerMetres" CHECK ("ToOdometerMetres" BETWEEN 0 AND 10000000000),
    CONSTRAINT "FK_Fitments_Components_ComponentId" FOREIGN KEY ("ComponentId") REFERENCES "Components" ("Id") ON DELETE RESTRICT,
    CONSTRAINT "FK_Fitments_Vehicles_VehicleId" FOREIGN KEY ("VehicleId") REFERENCES "Vehicles" ("Id") ON DELETE RESTRICT
) STRICT;
INSERT INTO Fitments VALUES(1,1,'2024-03-09',61204000.0,'61 204 km','km',1,'Engine','the frame came without one','',NULL,NULL,NULL,NULL,NULL,'01A21492-1FDC-7F6C-B89F-417646836B5C',1,0);
INSERT INTO Fitments VALUES(2,2,'2024-03-09',61204000.0,'61 204 km','km',2,'Transmission','bolted up with the engine','',NULL,NULL,NULL,NULL,NULL,'01A21492-2046-7043-99CF-4CB282EC7171',1,0);
INSERT INTO Fitments VALUES(3,3,'2024-03-16',61204000.0,'61 204','km',1,'RearAxle','back under the frame after cleaning','own axle whines, pinion chipped; tag of this one says 3.90','2024-10-12',64105000.0,'64 105','km',1,'01A21492-2051-7DA8-A3EB-FDD66FEFCCEA',1,1);
INSERT INTO Fitments VALUES(4,5,'2024-03-16',61204000.0,'61 204','km',2,'Tyres','to roll the frame about','taller tyres, to calm the engine on the road','2024-05-25',61690000.0,'61 690','km',1,'01A21492-205D-70CB-B3E1-38098A1231DF',1,1);
INSERT INTO Fitments VALUES(5,6,'2024-05-25',61690000.0,'61 690','km',1,'Tyres','taller tyres, to calm the engine on the road','',NULL,NULL,NULL,NULL,NULL,'01A21492-2067-7324-A334-59D498AB6C1B',1,0);
INSERT INTO Fitments VALUES(6,4,'2024-10-12',64105000.0,'64 105','km',1,'RearAxle','own axle whines, pinion chipped; tag of this one says 3.90','',NULL,NULL,NULL,NULL,NULL,'01A21492-2110-7DAC-82FC-6D606E5C69DD',1,0);
INSERT INTO Fitments VALUES(7,7,'2024-03-02',61816512.384000003336,'38 411','mi',1,'Engine','rebuilt','',NULL,NULL,NULL,NULL,NULL,'01A21492-21E8-7D22-9D86-3E40B0707ED6',2,0);
INSERT INTO Fitments VALUES(8,8,'2024-03-02',61816512.384000003336,'38 411','mi',2,'Transmission','rebuilt with the engine','',NULL,NULL,NULL,NULL,NULL,'01A21492-21F1-7765-AB28-211CA9C421E4',2,0);
INSERT INTO Fitments VALUES(9,12,'2024-03-16',61816512.384000003336,'38 411','mi',3,'Propshaft','balanced, new joints','',NULL,NULL,NULL,NULL,NULL,'01A21492-21FE-7260-851F-FDBA8B4C9ADA',2,0);
INSERT INTO Fitments VALUES(10,10,'2024-03-23',61816512.384000003336,'38 411','mi',1,'RearAxle','its own, new seals','too busy at 60; the long one from Ferrow','2024-06-15',62796602.880000002683,'39 020 mi','mi',1,'01A21492-2208-757B-996C-2939D4661DC6',2,1);
INSERT INTO Fitments VALUES(11,13,'2024-04-06',61818121.728000000117,'38 412','mi',1,'Tyres','right size for the arches','',NULL,NULL,NULL,NULL,NULL,'01A21492-2210-7793-A4E4-50B1E234D147',2,0);
INSERT INTO Fitments VALUES(12,11,'2024-06-15',62796602.880000002683,'39 020 mi','mi',1,'RearAxle','too busy at 60; the long one from Ferrow','',NULL,NULL,NULL,NULL,NULL,'01A21492-221F-7932-9B2C-923AC15BC086',2,0);
INSERT INTO Fitments VALUES(13,9,'2024-08-10',63639899.135999999941,'39 544','mi',1,'Overdrive','Rufus wants it quiet at 60','',NULL,NULL,NULL,NULL,NULL,'01A21492-223B-7A67-AF35-0610BABA6B3E',2,0);
INSERT INTO Fitments VALUES(14,14,'2024-04-13',148249550.59200000763,'92 118','mi',1,'Engine','back in after a head gasket','',NULL,NULL,NULL,NULL,NULL,'01A21492-22C2-74EE-A57E-813F8EA0BEFC',3,0);
INSERT INTO Fitments VALUES(15,15,'2024-04-13',148249550.59200000763,'92 118','mi',2,'Transmission','its own, for now','own box jumps out of second, and 70 mph is tiring','2024-07-27',152678465.28000000119,'94 870','mi',1,'01A21492-22C9-7A52-916E-FECE35D6600A',3,1);
INSERT INTO Fitments VALUES(16,17,'2024-04-13',148249550.59200000763,'92 118','mi',3,'RearAxle','cover off, teeth counted, new gasket','',NULL,NULL,NULL,NULL,NULL,'01A21492-22D2-7384-890F-490ADA123FFE',3,0);
INSERT INTO Fitments VALUES(17,18,'2024-04-13',148249550.59200000763,'92 118','mi',4,'Tyres','as it came','legal tread','2024-04-20',148249550.59200000763,'92 118','mi',1,'01A21492-22DB-7F8D-975E-B603EF850105',3,1);
INSERT INTO Fitments VALUES(18,19,'2024-04-13',148249550.59200000763,'92 118','mi',5,'Speedometer','its own','',NULL,NULL,NULL,NULL,NULL,'01A21492-22E9-7CE8-940D-8BA9BCCB2137',3,0);
INSERT INTO Fitments VALUES(19,20,'2024-04-20',148249550.59200000763,'92 118','mi',1,'Tyres','legal tread','',NULL,NULL,NULL,NULL,NULL,'01A21492-22F4-7F1E-9046-6FF42824A26F',3,0);
INSERT INTO Fitments VALUES(20,16,'2024-07-27',152678465.28000000119,'94 870','mi',1,'Transmission','own box jumps out of second, and 70 mph is tiring','',NULL,NULL,NULL,NULL,NULL,'01A21492-2307-709D-9215-648D1D897AF5',3,0);
INSERT INTO Fitments VALUES(21,21,'2024-09-14',0.0,'0','km',1,'Engine','odometer set to nought with the new dial','',NULL,NULL,NULL,NULL,NULL,'01A21492-2328-7ABB-95BE-020EC2CF4D42',4,0);
INSERT INTO Fitments VALUES(22,22,'2024-09-14',0.0,'0','km',2,'Transmission','in with the engine','',NULL,NULL,NULL,NULL,NULL,'01A21492-232F-7073-9A4F-5097B5EC7BD8',4,0);
INSERT INTO Fitments VALUES(23,23,'2024-11-02',0.0,'0','km',1,'RearAxle','it came with the shell and bolts straight up','',NULL,NULL,NULL,NULL,NULL,'01A21492-2337-7D18-93FD-06965595A95A',4,0);
INSERT INTO Fitments VALUES(24,24,'2024-11-09',0.0,'0','km',1,'Tyres','onto its wheels at last','',NULL,NULL,NULL,NULL,NULL,'01A21492-2340-7039-A4DA-961E0C1D9BC1',4,0);
INSERT INTO Fitments VALUES(25,25,'2024-04-27',140220000.0,'140 220','km',1,'Engine','the petrol engine was worn out','',NULL,NULL,NULL,NULL,NULL,'01A21492-239A-785B-942D-0FF492157DCB',5,0);
INSERT INTO Fitments VALUES(26,26,'2024-04-27',140220000.0,'140 220','km',2,'Transmission','new bearings','',NULL,NULL,NULL,NULL,NULL,'01A21492-23A1-768F-9C7C-1ED31531AFB7',5,0);
INSERT INTO Fitments VALUES(27,27,'2024-04-27',140220000.0,'140 220','km',3,'TransferCase','new seals','',NULL,NULL,NULL,NULL,NULL,'01A21492-23AC-7D38-8F8B-53F8F8CED995',5,0);
INSERT INTO Fitments VALUES(28,28,'2024-05-11',140220000.0,'140 220','km',1,'RearAxle','its own','the diesel runs out of revs at 90 km/h on the old pair','2024-10-05',143008000.0,'143 008','km',1,'01A21492-23B5-7E57-BD72-51BAC942A971',5,1);
INSERT INTO Fitments VALUES(29,29,'2024-05-11',140220000.0,'140 220','km',2,'FrontAxle','its own','has to match the rear','2024-10-05',143008000.0,'143 008','km',2,'01A21492-23BE-7129-9B28-45BC1933EAEB',5,1);
INSERT INTO Fitments VALUES(30,32,'2024-05-11',140220000.0,'140 220','km',3,'Tyres','mud pattern, to clear the arches','',NULL,NULL,NULL,NULL,NULL,'01A21492-23C8-7103-95F2-D7F158591C50',5,0);
INSERT INTO Fitments VALUES(31,30,'2024-10-05',143008000.0,'143 008','km',1,'RearAxle','the diesel runs out of revs at 90 km/h on the old pair','',NULL,NULL,NULL,NULL,NULL,'01A21492-23D8-74E3-B955-8C53E754EC84',5,0);
INSERT INTO Fitments VALUES(32,31,'2024-10-05',143008000.0,'143 008','km',2,'FrontAxle','has to match the rear','',NULL,NULL,NULL,NULL,NULL,'01A21492-23E3-7311-8672-60CFF3914B0F',5,0);
INSERT INTO Fitments VALUES(33,33,'2024-08-31',NULL,NULL,NULL,1,'Engine','as found','',NULL,NULL,NULL,NULL,NULL,'01A21492-24D3-74EA-9A35-E99685B8F3A3',6,0);
INSERT INTO Fitments VALUES(34,34,'2024-08-31',NULL,NULL,NULL,2,'Transmission','as found','',NULL,NULL,NULL,NULL,NULL,'01A21492-24DA-75F5-988D-52DE69599D3D',6,0);
INSERT INTO Fitments VALUES(35,35,'2024-08-31',NULL,NULL,NULL,3,'RearAxle','as found','',NULL,NULL,NULL,NULL,NULL,'01A21492-24E2-77F8-B711-9197CEC3317C',6,0);
INSERT INTO Fitments VALUES(36,5,'2024-12-07',118300000.0,'118 300','km',1,'Tyres','came off Brindle, good enough to push it about','',NULL,NULL,NULL,NULL,NULL,'01A21492-24F7-7E44-B1A3-8E13BADEFD70',6,0);
CREATE TABLE IF NOT EXISTS "Components" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_Components" PRIMARY KEY AUTOINCREMENT,
    "Construction" TEXT NULL,
    "ConverterLocksUp" INTEGER NULL,
    "Donor" TEXT NOT NULL,
    "DriveTeeth" INTEGER NULL,
    "DrivenTeeth" INTEGER NULL,
    "FrontDrive" TEXT NULL,
    "HighSi" REAL NULL,
    "HighSource" TEXT NULL,
    "HighText" TEXT NULL,
    "HighUnit" TEXT NULL,
    "HubReductionSi" REAL NULL,
    "HubReductionSource" TEXT NULL,
    "HubReductionText" TEXT NULL,
    "HubReductionUnit" TEXT NULL,
    "IdleSi" REAL NULL,
    "IdleSource" TEXT NULL,
    "IdleText" TEXT NULL,
    "IdleUnit" TEXT NULL,
    "Induction" TEXT NULL,
    "Kind" TEXT NOT NULL,
    "LowSi" REAL NULL,
    "LowSource" TEXT NULL,
    "LowText" TEXT NULL,
    "LowUnit" TEXT NULL,
    "Name" TEXT NOT NULL,
    "Notes" TEXT NOT NULL,
    "OverdriveRatioSi" REAL NULL,
    "OverdriveRatioSource" TEXT NULL,
    "OverdriveRatioText" TEXT NULL,
    "OverdriveRatioUnit" TEXT NULL,
    "PassengerOnTruck" INTEGER NULL,
    "Per" TEXT NULL,
    "Pickup" TEXT NULL,
    "Pinion" INTEGER NULL,
    "RedlineSi" REAL NULL,
    "RedlineSource" TEXT NULL,
    "RedlineText" TEXT NULL,
    "RedlineUnit" TEXT NULL,
    "Ring" INTEGER NULL,
    "Seat" TEXT NULL,
    "SerialNumber" TEXT NOT NULL,
    "Shelf" TEXT NOT NULL,
    "SizeText" TEXT NULL,
    "StatedCircumferenceSi" REAL NULL,
    "StatedCircumferenceSource" TEXT NULL,
    "StatedCircumferenceText" TEXT NULL,
    "StatedCircumferenceUnit" TEXT NULL,
    "StatedRatioSi" REAL NULL,
    "StatedRatioSource" TEXT NULL,
    "StatedRatioText" TEXT NULL,
    "StatedRatioUnit" TEXT NULL,
    "Studs" INTEGER NULL,
    "Thread" TEXT NULL,
    "TwinRear" INTEGER NULL,
    "Uid" TEXT NOT NULL,
    "Version" INTEGER NOT NULL,
    "WornSi" REAL NULL,
    "WornSource" TEXT NULL,
    "WornText" TEXT NULL,
    "WornUnit" TEXT NULL,
    CONSTRAINT "CK_Components_Construction" CHECK ("Construction" IN ('Radial', 'Bias')),
    CONSTRAINT "CK_Components_DrivenTeeth" CHECK ("DrivenTeeth" BETWEEN 3 AND 99),
    CONSTRAINT "CK_Components_DriveTeeth" CHECK ("DriveTeeth" BETWEEN 1 AND 60),
    CONSTRAINT "CK_Components_FrontDrive" CHECK ("FrontDrive" IN ('ThroughShaft', 'Declutch', 'CentreDifferential', 'ClutchPack')),
    CONSTRAINT "CK_Components_High" CHECK (("HighSi" IS NULL) + ("HighUnit" IS NULL) + ("HighText" IS NULL) + ("HighSource" IS NULL) IN (0, 4)),
    CONSTRAINT "CK_Components_HighSi" CHECK ("HighSi" BETWEEN 0.5 AND 6.0),
    CONSTRAINT "CK_Components_HighSource" CHECK ("HighSource" IN ('TeethCounted', 'Measured', 'MakersData', 'Tag', 'OwnersWord', 'Assumed')),
    CONSTRAINT "CK_Components_HubReduction" CHECK (("HubReductionSi" IS NULL) + ("HubReductionUnit" IS NULL) + ("HubReductionText" IS NULL) + ("HubReductionSource" IS NULL) IN (0, 4)),
    CONSTRAINT "CK_Components_HubReductionSi" CHECK ("HubReductionSi" BETWEEN 1.0 AND 6.0),
    CONSTRAINT "CK_Components_HubReductionSource" CHECK ("HubReductionSource" IN ('TeethCounted', 'Measured', 'MakersData', 'Tag', 'OwnersWord', 'Assumed')),
    CONSTRAINT "CK_Components_Idle" CHECK (("IdleSi" IS NULL) + ("IdleUnit" IS NULL) + ("IdleText" IS NULL) + ("IdleSource" IS NULL) IN (0, 4)),
    CONSTRAINT "CK_Components_IdleSi" CHECK ("IdleSi" BETWEEN 0.0 AND 1000.0),
    CONSTRAINT "CK_Components_IdleSource" CHECK ("IdleSource" IN ('TeethCounted', 'Measured', 'MakersData', 'Tag', 'OwnersWord', 'Assumed')),
    CONSTRAINT "CK_Components_Induction" CHECK ("Induction" IN ('NaturallyAspirated', 'Charged')),
    CONSTRAINT "CK_Components_Kind" CHECK ("Kind" IN ('engine', 'transmission', 'overdrive', 'transfer case', 'axle', 'propshaft', 'wheels', 'speedometer')),
    CONSTRAINT "CK_Components_Low" CHECK (("LowSi" IS NULL) + ("LowUnit" IS NULL) + ("LowText" IS NULL) + ("LowSource" IS NULL) IN (0, 4)),
    CONSTRAINT "CK_Components_LowSi" CHECK ("LowSi" BETWEEN 0.5 AND 6.0),
    CONSTRAINT "CK_Components_LowSource" CHECK ("LowSource" IN ('TeethCounted', 'Measured', 'MakersData', 'Tag', 'OwnersWord', 'Assumed')),
    CONSTRAINT "CK_Components_Name" CHECK (length(trim("Name")) > 0),
    CONSTRAINT "CK_Components_OverdriveRatio" CHECK (("OverdriveRatioSi" IS NULL) + ("OverdriveRatioUnit" IS NULL) + ("OverdriveRatioText" IS NULL) + ("OverdriveRatioSource" IS NULL) IN (0, 4)),
    CONSTRAINT "CK_Components_OverdriveRatioSi" CHECK ("OverdriveRatioSi" BETWEEN 0.4 AND 1.0),
    CONSTRAINT "CK_Components_OverdriveRatioSource" CHECK ("OverdriveRatioSource" IN ('TeethCounted', 'Measured', 'MakersData', 'Tag', 'OwnersWord', 'Assumed')),
    CONSTRAINT "CK_Components_Per" CHECK ("Per" IN ('Kilometres', 'Miles')),
    CONSTRAINT "CK_Components_Pickup" CHECK ("Pickup" IN ('Propshaft', 'GearboxOutput', 'Wheel')),
    CONSTRAINT "CK_Components_Pinion" CHECK ("Pinion" BETWEEN 4 AND 200),
    CONSTRAINT "CK_Components_Redline" CHECK (("RedlineSi" IS NULL) + ("RedlineUnit" IS NULL) + ("RedlineText" IS NULL) + ("RedlineSource" IS NULL) IN (0, 4)),
    CONSTRAINT "CK_Components_RedlineSi" CHECK ("RedlineSi" BETWEEN 0.0 AND 1000.0),
    CONSTRAINT "CK_Components_RedlineSource" CHECK ("RedlineSource" IN ('TeethCounted', 'Measured', 'MakersData', 'Tag', 'OwnersWord', 'Assumed')),
    CONSTRAINT "CK_Components_Ring" CHECK ("Ring" BETWEEN 4 AND 200),
    CONSTRAINT "CK_Components_Seat" CHECK ("Seat" IN ('Cone', 'Ball', 'Flat')),
    CONSTRAINT "CK_Components_SpeedometerTeeth" CHECK (("DriveTeeth" IS NULL) + ("DrivenTeeth" IS NULL) IN (0, 2)),
    CONSTRAINT "CK_Components_StatedCircumference" CHECK (("StatedCircumferenceSi" IS NULL) + ("StatedCircumferenceUnit" IS NULL) + ("StatedCircumferenceText" IS NULL) + ("StatedCircumferenceSource" IS NULL) IN (0, 4)),
    CONSTRAINT "CK_Components_StatedCircumferenceSi" CHECK ("StatedCircumferenceSi" BETWEEN 0.8 AND 6.0),
    CONSTRAINT "CK_Components_StatedCircumferenceSource" CHECK ("StatedCircumferenceSource" IN ('TeethCounted', 'Measured', 'MakersData', 'Tag', 'OwnersWord', 'Assumed')),
    CONSTRAINT "CK_Components_StatedRatio" CHECK (("StatedRatioSi" IS NULL) + ("StatedRatioUnit" IS NULL) + ("StatedRatioText" IS NULL) + ("StatedRatioSource" IS NULL) IN (0, 4)),
    CONSTRAINT "CK_Components_StatedRatioSi" CHECK ("StatedRatioSi" BETWEEN 1.5 AND 12.0),
    CONSTRAINT "CK_Components_StatedRatioSource" CHECK ("StatedRatioSource" IN ('TeethCounted', 'Measured', 'MakersData', 'Tag', 'OwnersWord', 'Assumed')),
    CONSTRAINT "CK_Components_Studs" CHECK ("Studs" BETWEEN 3 AND 10),
    CONSTRAINT "CK_Components_Teeth" CHECK (("Ring" IS NULL) + ("Pinion" IS NULL) IN (0, 2)),
    CONSTRAINT "CK_Components_Thread" CHECK (length(trim("Thread")) > 0),
    CONSTRAINT "CK_Components_wheels" CHECK ("Kind" <> 'wheels' OR ("SizeText" IS NOT NULL AND "Construction" IS NOT NULL)),
    CONSTRAINT "CK_Components_Worn" CHECK (("WornSi" IS NULL) + ("WornUnit" IS NULL) + ("WornText" IS NULL) + ("WornSource" IS NULL) IN (0, 4)),
    CONSTRAINT "CK_Components_WornSi" CHECK ("WornSi" BETWEEN 0.0 AND 0.03),
    CONSTRAINT "CK_Components_WornSource" CHECK ("WornSource" IN ('TeethCounted', 'Measured', 'MakersData', 'Tag', 'OwnersWord', 'Assumed'))
) STRICT;
INSERT INTO Components VALUES(1,NULL,NULL,'Wexcombe delivery van, Tolland yard',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,10.833333333333333925,'Measured','650 rpm','rev/min',NULL,'engine',NULL,NULL,NULL,NULL,'Corvane 3.3 six','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,76.666666666666671405,'MakersData','4600 rpm','rev/min',NULL,NULL,'CV33-118204','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A21492-1D3A-75B4-9B24-4A441F97EA81',0,NULL,NULL,NULL,NULL);
INSERT INTO Components VALUES(2,NULL,NULL,'came with the engine',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'transmission',NULL,NULL,NULL,NULL,'Delmere D4 four-speed','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'D4-60921','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A21492-1DD1-7E65-A978-7E6D76B40F88',0,NULL,NULL,NULL,NULL);
INSERT INTO Components VALUES(3,NULL,NULL,'came with the frame',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'axle',NULL,NULL,NULL,NULL,'Harrow axle, the frame''s own','Pinion chipped on two teeth; whines from 70 km/h.',NULL,NULL,NULL,NULL,NULL,NULL,NULL,13,NULL,NULL,NULL,NULL,43,NULL,'HR-3-0077','under the bench, left',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A21492-1E1A-7EBE-8484-037B89E29EEF',0,NULL,NULL,NULL,NULL);
INSERT INTO Components VALUES(4,NULL,NULL,'Tolland yard, row 6, no vehicle with it',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'axle',NULL,NULL,NULL,NULL,'Harrow yard axle','Cover and tag look newer than the housing.',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'HR-7-4410','',NULL,NULL,NULL,NULL,NULL,3.8999999999999999111,'Tag','3.90','',NULL,NULL,NULL,'01A21492-1E51-76CF-83A8-9A15D3AD3AD2',0,NULL,NULL,NULL,NULL);
INSERT INTO Components VALUES(5,'Radial',NULL,'came with the frame',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'wheels',NULL,NULL,NULL,NULL,'Stavely 205/75R15 on steel','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'','','205/75R15',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A21492-1E54-7858-AC74-07AA4054D5E9',0,NULL,NULL,NULL,NULL);
INSERT INTO Components VALUES(6,'Radial',NULL,'bought new',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'wheels',NULL,NULL,NULL,NULL,'Stavely 235/75R15 on steel','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'','','235/75R15 105S',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A21492-1E8A-72D7-B430-F9A61CEC8249',0,NULL,NULL,NULL,NULL);
INSERT INTO Components VALUES(7,NULL,NULL,'its own',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,12.5,'Measured','750 rpm','rev/min',NULL,'engine',NULL,NULL,NULL,NULL,'Corvane 2.1 four','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,86.666666666666671405,'OwnersWord','5200 rpm','rev/min',NULL,NULL,'CV21-7715','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A21492-2155-75CE-B3EE-7EE06C812CE7',0,NULL,NULL,NULL,NULL);
INSERT INTO Components VALUES(8,NULL,NULL,'its own',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'transmission',NULL,NULL,NULL,NULL,'Delmere D4 light','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'D4L-1123','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A21492-2159-7988-B98E-551B713D7900',0,NULL,NULL,NULL,NULL);
INSERT INTO Components VALUES(9,NULL,NULL,'swap meet at Ferrow',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'overdrive',NULL,NULL,NULL,NULL,'Delmere step-up unit','',0.78000000000000002664,'MakersData','0.78','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'SU-338','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A21492-215F-7B99-9F7C-66A784D3D5DA',0,NULL,NULL,NULL,NULL);
INSERT INTO Components VALUES(10,NULL,NULL,'its own',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'axle',NULL,NULL,NULL,NULL,'Harrow light axle, short','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'HR-L-209','rack B, bottom',NULL,NULL,NULL,NULL,NULL,4.2999999999999998223,'OwnersWord','4.3','',NULL,NULL,NULL,'01A21492-2176-7E03-903A-02FBFEE50A8F',0,NULL,NULL,NULL,NULL);
INSERT INTO Components VALUES(11,NULL,NULL,'saloon wreck at Ferrow',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'axle',NULL,NULL,NULL,NULL,'Harrow light axle, long','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'HR-L-311','',NULL,NULL,NULL,NULL,NULL,3.8999999999999999111,'Tag','3.90','',NULL,NULL,NULL,'01A21492-217A-7AC7-896B-AF14FF83DAE6',0,NULL,NULL,NULL,NULL);
INSERT INTO Components VALUES(12,NULL,NULL,'its own',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'propshaft',NULL,NULL,NULL,NULL,'Ottery''s own propshaft','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A21492-217E-7184-9721-7E0B7E6C15BF',0,NULL,NULL,NULL,NULL);
INSERT INTO Components VALUES(13,'Bias',NULL,'bought new',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'wheels',NULL,NULL,NULL,NULL,'Tarn 165/80-15 on wires','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'','','165/80-15',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A21492-21E0-73F1-A12B-988E79639FC8',0,NULL,NULL,NULL,NULL);
INSERT INTO Components VALUES(14,NULL,NULL,'its own',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,13.333333333333333925,'MakersData','800 rpm','rev/min',NULL,'engine',NULL,NULL,NULL,NULL,'Corvane 2.3 four','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,96.666666666666671405,'MakersData','5800 rpm','rev/min',NULL,NULL,'CV23-90411','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A21492-2249-79B1-A79D-B57F6468D6C2',0,NULL,NULL,NULL,NULL);
INSERT INTO Components VALUES(15,NULL,NULL,'its own',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'transmission',NULL,NULL,NULL,NULL,'Delmere D4, Tansy''s own','Jumps out of second.',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'D4-33870','rack A, top',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A21492-224D-79E3-9493-34B0DBF0E6CA',0,NULL,NULL,NULL,NULL);
INSERT INTO Components VALUES(16,NULL,NULL,'Tolland yard, from a late saloon',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'transmission',NULL,NULL,NULL,NULL,'Delmere D5 five-speed','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'D5-00214','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A21492-225F-74C9-9B30-0224BD26D11D',0,NULL,NULL,NULL,NULL);
INSERT INTO Components VALUES(17,NULL,NULL,'its own',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'axle',NULL,NULL,NULL,NULL,'Harrow axle 41/11','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,11,NULL,NULL,NULL,NULL,41,NULL,'HR-5-2218','',NULL,NULL,NULL,NULL,NULL,3.7299999999999999822,'Tag','3.73','',NULL,NULL,NULL,'01A21492-2264-72E2-A7E4-8C6A7628F70D',0,NULL,NULL,NULL,NULL);
INSERT INTO Components VALUES(18,'Radial',NULL,'came with it',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'wheels',NULL,NULL,NULL,NULL,'Norwell 185/60R15 on alloys','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'','loft','185/60R15 84H',1.8400000000000000799,'MakersData','1.84 m','m',NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A21492-2268-77B7-8D0B-F79A239E0189',0,NULL,NULL,NULL,NULL);
INSERT INTO Components VALUES(19,NULL,NULL,'its own',6,22,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'speedometer',NULL,NULL,NULL,NULL,'Tansy''s own speedometer','',NULL,NULL,NULL,NULL,NULL,'Miles',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A21492-226C-7DD9-B722-8D1763B59E5A',0,NULL,NULL,NULL,NULL);
INSERT INTO Components VALUES(20,'Radial',NULL,'bought new',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'wheels',NULL,NULL,NULL,NULL,'Norwell 195/65R15 on alloys','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'','','195/65R15 91H',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A21492-22B9-7791-BB26-7690E23DA930',0,0.0020000000000000000416,'Measured','2 mm','mm');
INSERT INTO Components VALUES(21,NULL,NULL,'Tolland yard',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,11.666666666666666074,'OwnersWord','700 rpm','rev/min',NULL,'engine',NULL,NULL,NULL,NULL,'Corvane 2.7 six','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,100.0,'MakersData','6000 rpm','rev/min',NULL,NULL,'CV27-40032','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A21492-2315-7376-9B16-B5667FA11148',0,NULL,NULL,NULL,NULL);
INSERT INTO Components VALUES(22,NULL,NULL,'Bastian''s shelf',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'transmission',NULL,NULL,NULL,NULL,'Delmere D4 close-ratio','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'D4C-511','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A21492-2318-77E8-A2B5-0B731275DB48',0,NULL,NULL,NULL,NULL);
INSERT INTO Components VALUES(23,NULL,NULL,'unknown, bought with the shell',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'axle',NULL,NULL,NULL,NULL,'Harrow narrow axle','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'HR-N-0815','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A21492-231D-7854-8377-6E2C0E0F6E16',0,NULL,NULL,NULL,NULL);
INSERT INTO Components VALUES(24,'Radial',NULL,'bought new',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'wheels',NULL,NULL,NULL,NULL,'Norwell 185/70R14 on steel','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'','','185/70R14 88T',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A21492-2321-7333-BF4F-150BBFAE3D36',0,NULL,NULL,NULL,NULL);
INSERT INTO Components VALUES(25,NULL,NULL,'ground-power set, Ferrow',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,10.0,'Measured','600 rpm','rev/min',NULL,'engine',NULL,NULL,NULL,NULL,'Corvane 3.9 diesel','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,60.0,'MakersData','3600 rpm','rev/min',NULL,NULL,'CVD39-2260','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A21492-2358-75B9-AC44-C13ACB7DD54B',0,NULL,NULL,NULL,NULL);
INSERT INTO Components VALUES(26,NULL,NULL,'its own',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'transmission',NULL,NULL,NULL,NULL,'Delmere D4 heavy','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'D4H-902','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A21492-235B-7FAB-B22F-9F9033322214',0,NULL,NULL,NULL,NULL);
INSERT INTO Components VALUES(27,NULL,NULL,'its own',NULL,NULL,'Declutch',1.0,'MakersData','1.00','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'transfer case',2.3199999999999998401,'MakersData','2.32','','Marlow M2 transfer case','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'M2-4451','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A21492-235F-7E50-909D-4A3DDAFCD158',0,NULL,NULL,NULL,NULL);
INSERT INTO Components VALUES(28,NULL,NULL,'its own',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'axle',NULL,NULL,NULL,NULL,'Harrow heavy rear 4.56','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,9,NULL,NULL,NULL,NULL,41,NULL,'HR-H-120','rack C',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A21492-238B-7378-941F-ED7C1700CF66',0,NULL,NULL,NULL,NULL);
INSERT INTO Components VALUES(29,NULL,NULL,'its own',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'axle',NULL,NULL,NULL,NULL,'Harrow heavy front 4.56','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,9,NULL,NULL,NULL,NULL,41,NULL,'HR-HF-121','rack C',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A21492-238E-77CB-9156-57C638737F11',0,NULL,NULL,NULL,NULL);
INSERT INTO Components VALUES(30,NULL,NULL,'Tolland yard, matched pair',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'axle',NULL,NULL,NULL,NULL,'Harrow heavy rear 4.10','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,10,NULL,NULL,NULL,NULL,41,NULL,'HR-H-388','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A21492-2390-77AB-88D0-ABF3783A51C3',0,NULL,NULL,NULL,NULL);
INSERT INTO Components VALUES(31,NULL,NULL,'Tolland yard, matched pair',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'axle',NULL,NULL,NULL,NULL,'Harrow heavy front 4.10','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'HR-HF-389','',NULL,NULL,NULL,NULL,NULL,4.0999999999999996447,'Tag','4.10','',NULL,NULL,NULL,'01A21492-2393-7B1D-B3D6-8E3F4FB715FE',0,NULL,NULL,NULL,NULL);
INSERT INTO Components VALUES(32,'Radial',NULL,'bought new',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'wheels',NULL,NULL,NULL,NULL,'Tarn LT235/85R16 on steel','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'','','LT235/85R16 120/116Q',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A21492-2395-7CFC-9808-D2DDF986700C',0,NULL,NULL,NULL,NULL);
INSERT INTO Components VALUES(33,NULL,NULL,'its own',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'engine',NULL,NULL,NULL,NULL,'Corvane 2.1 four, van''s own','Turns over by hand.',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A21492-23F7-7E21-AE86-9ECEA83711FB',0,NULL,NULL,NULL,NULL);
INSERT INTO Components VALUES(34,NULL,NULL,'its own',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'transmission',NULL,NULL,NULL,NULL,'Delmere D4 column-shift','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A21492-23FA-730B-83C0-D9D73354E3E6',0,NULL,NULL,NULL,NULL);
INSERT INTO Components VALUES(35,NULL,NULL,'its own',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'axle',NULL,NULL,NULL,NULL,'van''s own axle, no tag','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A21492-23FF-7A64-B71C-34A17AD5D898',0,NULL,NULL,NULL,NULL);
CREATE TABLE IF NOT EXISTS "Vehicles" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_Vehicles" PRIMARY KEY AUTOINCREMENT,
    "BodyClass" TEXT NULL,
    "ChassisNumber" TEXT NOT NULL,
    "DrivesInFront" INTEGER NOT NULL,
    "Name" TEXT NOT NULL,
    "NameKey" TEXT NOT NULL,
    "Notes" TEXT NOT NULL,
    "OdometerUnit" TEXT NOT NULL,
    "Owner" TEXT NOT NULL,
    "Registration" TEXT NOT NULL,
    "RollingClass" TEXT NULL,
    "State" TEXT NOT NULL,
    "Uid" TEXT NOT NULL,
    "Version" INTEGER NOT NULL,
    CONSTRAINT "CK_Vehicles_BodyClass" CHECK ("BodyClass" IN ('saloon, 1945–60', 'large saloon, 1960–79', 'saloon, 1960–79', 'saloon, 1980–95', 'coupé, 1964–74', 'pickup with separate wings, 1935–55', 'pickup, 1955–72', 'pickup, 1973–91', 'raised 4×4 pickup', 'compact pickup, 1975–95', 'rear-engined van, 1950–79', 'box van, 1970–95', 'short 4×4, upright screen', 'station-wagon 4×4, 1970–99')),
    CONSTRAINT "CK_Vehicles_Name" CHECK (length(trim("Name")) > 0),
    CONSTRAINT "CK_Vehicles_NameKey" CHECK (length(trim("NameKey")) > 0),
    CONSTRAINT "CK_Vehicles_OdometerUnit" CHECK ("OdometerUnit" IN ('Kilometres', 'Miles')),
    CONSTRAINT "CK_Vehicles_RollingClass" CHECK ("RollingClass" IN ('modern radial', 'radial, 1970–89', 'bias ply', 'mud tread at road pressure', 'loose gravel', 'medium hard soil', 'sand')),
    CONSTRAINT "CK_Vehicles_State" CHECK ("State" IN ('Planned', 'InBuild', 'OnTheRoad', 'LaidUp', 'HandedOver'))
) STRICT;
INSERT INTO Vehicles VALUES(1,NULL,'WX-PU-20417',0,'Brindle','BRINDLE','Half-ton pickup, bare frame when it came. Wants to cross the county without shouting.','Kilometres','Agnes Thorley','BT 417',NULL,'InBuild','01A21492-1ABD-76BD-B0C0-EEE9BC726B97',0);
INSERT INTO Vehicles VALUES(2,NULL,'OT 5529',0,'Ottery','OTTERY','Open tourer. Handed over with its sheet in September 2024.','Miles','Rufus Keel','KEE 55',NULL,'HandedOver','01A21492-214E-7EAC-AFE6-73CDF8AB4693',0);
INSERT INTO Vehicles VALUES(3,NULL,'TN-88-3105',0,'Tansy','TANSY','Estate, daily use.','Miles','Dorrit Ames','D 3105 A',NULL,'OnTheRoad','01A21492-2241-7D89-A5A1-06769360D6EC',0);
INSERT INTO Vehicles VALUES(4,NULL,'QL 70 0093',0,'Quillon','QUILLON','Fastback coupe, shell painted, going together.','Kilometres','Bastian Orme','',NULL,'InBuild','01A21492-230D-7092-8A46-8B38148635BC',0);
INSERT INTO Vehicles VALUES(5,NULL,'HD4-1177-L',0,'Haldor','HALDOR','Long-wheelbase 4×4, carries the mowers.','Kilometres','Ilse Marrick','IM 1177',NULL,'InBuild','01A21492-2351-79F3-BAFC-51B2703D6AAB',0);
INSERT INTO Vehicles VALUES(6,NULL,'not found yet',0,'Pellow','PELLOW','Panel van, for the shop itself once the others are out.','Kilometres','the shop','',NULL,'Planned','01A21492-23F0-7097-AD63-BC497F527DB4',0);
DELETE FROM sqlite_sequence;
INSERT INTO sqlite_sequence VALUES('Goals',6);
INSERT INTO sqlite_sequence VALUES('Fitments',36);
INSERT INTO sqlite_sequence VALUES('Components',35);
INSERT INTO sqlite_sequence VALUES('Vehicles',6);
INSERT INTO sqlite_sequence VALUES('Gears',29);
INSERT INTO sqlite_sequence VALUES('Sessions',10);
INSERT INTO sqlite_sequence VALUES('Readings',24);
INSERT INTO sqlite_sequence VALUES('ShaftPieces',1);
INSERT INTO sqlite_sequence VALUES('Specs',1);
CREATE UNIQUE INDEX "IX_Gears_TransmissionId_Ordinal" ON "Gears" ("TransmissionId", "Ordinal");
CREATE UNIQUE INDEX "IX_Readings_SessionId_Ordinal" ON "Readings" ("SessionId", "Ordinal");
CREATE INDEX "IX_Sessions_ComponentId_Date" ON "Sessions" ("ComponentId", "Date");
CREATE UNIQUE INDEX "IX_Sessions_Uid" ON "Sessions" ("Uid");
CREATE INDEX "IX_Sessions_VehicleId_Date" ON "Sessions" ("VehicleId", "Date");
CREATE UNIQUE INDEX "IX_ShaftPieces_PropshaftId_Ordinal" ON "ShaftPieces" ("PropshaftId", "Ordinal");
CREATE UNIQUE INDEX "IX_Specs_ComponentId_Spec" ON "Specs" ("ComponentId", "Spec");
CREATE UNIQUE INDEX "IX_Specs_VehicleId_Spec" ON "Specs" ("VehicleId", "Spec");
CREATE UNIQUE INDEX "IX_Goals_OneHill" ON "Goals" ("VehicleId") WHERE "Kind" = 'hill';
CREATE UNIQUE INDEX "IX_Goals_OneLimitOfEach" ON "Goals" ("VehicleId", "Limited");
CREATE UNIQUE INDEX "IX_Goals_Uid" ON "Goals" ("Uid");
CREATE INDEX "IX_Goals_VehicleId" ON "Goals" ("VehicleId");
CREATE INDEX "IX_Fitments_ComponentId_FromDate" ON "Fitments" ("ComponentId", "FromDate");
CREATE UNIQUE INDEX "IX_Fitments_OnePartAtATime" ON "Fitments" ("VehicleId", "Position") WHERE "ToDate" IS NULL;
CREATE UNIQUE INDEX "IX_Fitments_OnePlaceAtATime" ON "Fitments" ("ComponentId") WHERE "ToDate" IS NULL;
CREATE UNIQUE INDEX "IX_Fitments_Uid" ON "Fitments" ("Uid");
CREATE INDEX "IX_Fitments_VehicleId_FromDate" ON "Fitments" ("VehicleId", "FromDate");
CREATE UNIQUE INDEX "IX_Components_Uid" ON "Components" ("Uid");
CREATE UNIQUE INDEX "IX_Vehicles_NameKey" ON "Vehicles" ("NameKey");
CREATE UNIQUE INDEX "IX_Vehicles_Uid" ON "Vehicles" ("Uid");
CREATE TRIGGER "Fitments_Insert_NoOverlap" BEFORE INSERT ON "Fitments"
WHEN EXISTS (
    SELECT 1 FROM "Fitments" AS other
    WHERE other."Id" IS NOT NEW."Id"
      AND (other."ComponentId" = NEW."ComponentId" OR (other."VehicleId" = NEW."VehicleId" AND other."Position" = NEW."Position"))
      AND (NEW."ToDate" IS NULL OR (other."FromDate", other."FromOrder") < (NEW."ToDate", NEW."ToOrder"))
      AND (other."ToDate" IS NULL OR (NEW."FromDate", NEW."FromOrder") < (other."ToDate", other."ToOrder")))
BEGIN
    SELECT RAISE(ABORT, 'Nothing was changed: the part or its place is taken on these days by another fitment.');
END;
CREATE TRIGGER "Fitments_Update_NoOverlap" BEFORE UPDATE ON "Fitments"
WHEN EXISTS (
    SELECT 1 FROM "Fitments" AS other
    WHERE other."Id" IS NOT NEW."Id"
      AND (other."ComponentId" = NEW."ComponentId" OR (other."VehicleId" = NEW."VehicleId" AND other."Position" = NEW."Position"))
      AND (NEW."ToDate" IS NULL OR (other."FromDate", other."FromOrder") < (NEW."ToDate", NEW."ToOrder"))
      AND (other."ToDate" IS NULL OR (NEW."FromDate", NEW."FromOrder") < (other."ToDate", other."ToOrder")))
BEGIN
    SELECT RAISE(ABORT, 'Nothing was changed: the part or its place is taken on these days by another fitment.');
END;
COMMIT;
