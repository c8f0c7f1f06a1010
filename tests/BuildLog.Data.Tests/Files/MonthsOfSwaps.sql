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
INSERT INTO __EFMigrationsHistory VALUES('20261125221700_MonthsOfSwaps','10.0.15');
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
INSERT INTO Readings VALUES(17,7,1,'10:8.1');
INSERT INTO Readings VALUES(18,7,2,'20:16.2');
INSERT INTO Readings VALUES(19,8,1,'3:5 1/4');
INSERT INTO Readings VALUES(20,9,1,'1:1876mm');
INSERT INTO Readings VALUES(21,9,2,'2:3751mm');
INSERT INTO Readings VALUES(22,9,3,'4:7.503 m');
INSERT INTO Readings VALUES(23,10,1,'1:2531mm');
INSERT INTO Readings VALUES(24,10,2,'3:7596mm');
INSERT INTO Readings VALUES(25,11,1,'10:20 1/2');
INSERT INTO Readings VALUES(26,11,2,'20:41');
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
INSERT INTO Fitments VALUES(1,1,'2024-03-09',61204000.0,'61 204 km','km',1,'Engine','the frame came without one','',NULL,NULL,NULL,NULL,NULL,'01A2157D-DC8A-715C-A2FC-739D8D042B01',1,0);
INSERT INTO Fitments VALUES(2,2,'2024-03-09',61204000.0,'61 204 km','km',2,'Transmission','bolted up with the engine','',NULL,NULL,NULL,NULL,NULL,'01A2157D-DCCD-7B93-8FB8-446929C69794',1,0);
INSERT INTO Fitments VALUES(3,3,'2024-03-16',61204000.0,'61 204','km',1,'RearAxle','back under the frame after cleaning','own axle whines, pinion chipped; tag of this one says 3.90','2024-10-12',64105000.0,'64 105','km',1,'01A2157D-DCD7-7DEE-B897-37F3D380ED6E',1,1);
INSERT INTO Fitments VALUES(4,5,'2024-03-16',61204000.0,'61 204','km',2,'Tyres','to roll the frame about','taller tyres, to calm the engine on the road','2024-05-25',61690000.0,'61 690','km',1,'01A2157D-DCE1-7AE7-84D1-A0963116EC6D',1,1);
INSERT INTO Fitments VALUES(5,6,'2024-05-25',61690000.0,'61 690','km',1,'Tyres','taller tyres, to calm the engine on the road','',NULL,NULL,NULL,NULL,NULL,'01A2157D-DCEB-782F-9374-2E325E48CB90',1,0);
INSERT INTO Fitments VALUES(6,4,'2024-10-12',64105000.0,'64 105','km',1,'RearAxle','own axle whines, pinion chipped; tag of this one says 3.90','',NULL,NULL,NULL,NULL,NULL,'01A2157D-DD7C-7557-BD14-C3873C597854',1,0);
INSERT INTO Fitments VALUES(7,7,'2024-03-02',61816512.384000003336,'38 411','mi',1,'Engine','rebuilt','',NULL,NULL,NULL,NULL,NULL,'01A2157D-DF5C-7B3F-A95D-9CD4D25487DB',2,0);
INSERT INTO Fitments VALUES(8,8,'2024-03-02',61816512.384000003336,'38 411','mi',2,'Transmission','rebuilt with the engine','',NULL,NULL,NULL,NULL,NULL,'01A2157D-DF62-7A6B-A42A-B88656D8B45B',2,0);
INSERT INTO Fitments VALUES(9,12,'2024-03-16',61816512.384000003336,'38 411','mi',3,'Propshaft','balanced, new joints','',NULL,NULL,NULL,NULL,NULL,'01A2157D-DF6B-7A70-803A-4DB0414F9FA0',2,0);
INSERT INTO Fitments VALUES(10,10,'2024-03-23',61816512.384000003336,'38 411','mi',1,'RearAxle','its own, new seals','too busy at 60; the long one from Ferrow','2024-06-15',62796602.880000002683,'39 020 mi','mi',1,'01A2157D-DF72-7E9A-B487-E5AEC7EA4016',2,1);
INSERT INTO Fitments VALUES(11,13,'2024-04-06',61818121.728000000117,'38 412','mi',1,'Tyres','right size for the arches','',NULL,NULL,NULL,NULL,NULL,'01A2157D-DF7B-7C77-9A8A-749E5D16B78D',2,0);
INSERT INTO Fitments VALUES(12,11,'2024-06-15',62796602.880000002683,'39 020 mi','mi',1,'RearAxle','too busy at 60; the long one from Ferrow','',NULL,NULL,NULL,NULL,NULL,'01A2157D-DF86-7D43-A63E-3F37C0494F14',2,0);
INSERT INTO Fitments VALUES(13,9,'2024-08-10',63639899.135999999941,'39 544','mi',1,'Overdrive','Rufus wants it quiet at 60','',NULL,NULL,NULL,NULL,NULL,'01A2157D-DF99-7A0A-A876-2E784EBF790F',2,0);
INSERT INTO Fitments VALUES(14,14,'2024-04-13',148249550.59200000763,'92 118','mi',1,'Engine','back in after a head gasket','',NULL,NULL,NULL,NULL,NULL,'01A2157D-DFE8-75F4-B15E-AC7897E9AF1D',3,0);
INSERT INTO Fitments VALUES(15,15,'2024-04-13',148249550.59200000763,'92 118','mi',2,'Transmission','its own, for now','own box jumps out of second, and 70 mph is tiring','2024-07-27',152678465.28000000119,'94 870','mi',1,'01A2157D-DFEF-7E12-BBD8-95350AA2A28D',3,1);
INSERT INTO Fitments VALUES(16,17,'2024-04-13',148249550.59200000763,'92 118','mi',3,'RearAxle','cover off, teeth counted, new gasket','',NULL,NULL,NULL,NULL,NULL,'01A2157D-DFF7-7CB5-8E82-2BE84DF12497',3,0);
INSERT INTO Fitments VALUES(17,18,'2024-04-13',148249550.59200000763,'92 118','mi',4,'Tyres','as it came','legal tread','2024-04-20',148249550.59200000763,'92 118','mi',1,'01A2157D-DFFF-769A-BFC8-A5540968DD3C',3,1);
INSERT INTO Fitments VALUES(18,19,'2024-04-13',148249550.59200000763,'92 118','mi',5,'Speedometer','its own','',NULL,NULL,NULL,NULL,NULL,'01A2157D-E007-700E-937B-8989231633DB',3,0);
INSERT INTO Fitments VALUES(19,20,'2024-04-20',148249550.59200000763,'92 118','mi',1,'Tyres','legal tread','',NULL,NULL,NULL,NULL,NULL,'01A2157D-E010-7366-A9F3-F3CA827814D6',3,0);
INSERT INTO Fitments VALUES(20,16,'2024-07-27',152678465.28000000119,'94 870','mi',1,'Transmission','own box jumps out of second, and 70 mph is tiring','',NULL,NULL,NULL,NULL,NULL,'01A2157D-E02D-72DB-8465-2019C3B0E481',3,0);
INSERT INTO Fitments VALUES(21,21,'2024-09-14',0.0,'0','km',1,'Engine','odometer set to nought with the new dial','',NULL,NULL,NULL,NULL,NULL,'01A2157D-E045-7162-9DBF-6DD71697CD39',4,0);
INSERT INTO Fitments VALUES(22,22,'2024-09-14',0.0,'0','km',2,'Transmission','in with the engine','',NULL,NULL,NULL,NULL,NULL,'01A2157D-E04B-758A-BB31-2FF93EED5737',4,0);
INSERT INTO Fitments VALUES(23,23,'2024-11-02',0.0,'0','km',1,'RearAxle','it came with the shell and bolts straight up','',NULL,NULL,NULL,NULL,NULL,'01A2157D-E052-7A0A-9FEE-E81137E6D30F',4,0);
INSERT INTO Fitments VALUES(24,24,'2024-11-09',0.0,'0','km',1,'Tyres','onto its wheels at last','',NULL,NULL,NULL,NULL,NULL,'01A2157D-E05A-77E6-9DBB-0E4BA9C205BB',4,0);
INSERT INTO Fitments VALUES(25,25,'2024-04-27',140220000.0,'140 220','km',1,'Engine','the petrol engine was worn out','',NULL,NULL,NULL,NULL,NULL,'01A2157D-E0A5-7C4B-8DF1-19AEB3431150',5,0);
INSERT INTO Fitments VALUES(26,26,'2024-04-27',140220000.0,'140 220','km',2,'Transmission','new bearings','',NULL,NULL,NULL,NULL,NULL,'01A2157D-E0AB-7A5A-A090-E8FBD2730A7C',5,0);
INSERT INTO Fitments VALUES(27,27,'2024-04-27',140220000.0,'140 220','km',3,'TransferCase','new seals','',NULL,NULL,NULL,NULL,NULL,'01A2157D-E0B5-789F-ADD3-16604AAC2EFC',5,0);
INSERT INTO Fitments VALUES(28,28,'2024-05-11',140220000.0,'140 220','km',1,'RearAxle','its own','the diesel runs out of revs at 90 km/h on the old pair','2024-10-05',143008000.0,'143 008','km',1,'01A2157D-E0BD-7DFE-9F6A-AF334C29915B',5,1);
INSERT INTO Fitments VALUES(29,29,'2024-05-11',140220000.0,'140 220','km',2,'FrontAxle','its own','has to match the rear','2024-10-05',143008000.0,'143 008','km',2,'01A2157D-E0C6-7473-AB02-D9F6769C5867',5,1);
INSERT INTO Fitments VALUES(30,32,'2024-05-11',140220000.0,'140 220','km',3,'Tyres','mud pattern, to clear the arches','',NULL,NULL,NULL,NULL,NULL,'01A2157D-E0CE-7A95-80AF-06EEE9F7ADB8',5,0);
INSERT INTO Fitments VALUES(31,30,'2024-10-05',143008000.0,'143 008','km',1,'RearAxle','the diesel runs out of revs at 90 km/h on the old pair','',NULL,NULL,NULL,NULL,NULL,'01A2157D-E0E9-7987-B250-EB2B5785B400',5,0);
INSERT INTO Fitments VALUES(32,31,'2024-10-05',143008000.0,'143 008','km',2,'FrontAxle','has to match the rear','',NULL,NULL,NULL,NULL,NULL,'01A2157D-E0F3-7E14-81CF-512FC4C74AF2',5,0);
INSERT INTO Fitments VALUES(33,33,'2024-08-31',NULL,NULL,NULL,1,'Engine','as found','',NULL,NULL,NULL,NULL,NULL,'01A2157D-E1AF-76C1-A960-B7C62E8B5CB1',6,0);
INSERT INTO Fitments VALUES(34,34,'2024-08-31',NULL,NULL,NULL,2,'Transmission','as found','',NULL,NULL,NULL,NULL,NULL,'01A2157D-E1B5-73B2-B6AF-A272B1FB9E4B',6,0);
INSERT INTO Fitments VALUES(35,35,'2024-08-31',NULL,NULL,NULL,3,'RearAxle','as found','',NULL,NULL,NULL,NULL,NULL,'01A2157D-E1BB-7C4D-928C-D3FDE3C09EC6',6,0);
INSERT INTO Fitments VALUES(36,5,'2024-12-07',118300000.0,'118 300','km',1,'Tyres','came off Brindle, good enough to push it about','',NULL,NULL,NULL,NULL,NULL,'01A2157D-E1CB-7732-8F40-645B09616DE0',6,0);
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
INSERT INTO Vehicles VALUES(1,NULL,'WX-PU-20417',0,'Brindle','BRINDLE','Half-ton pickup, bare frame when it came. Wants to cross the county without shouting.','Kilometres','Agnes Thorley','BT 417',NULL,'InBuild','01A2157D-D94A-77BF-B79A-05CC18AF6535',0);
INSERT INTO Vehicles VALUES(2,NULL,'OT 5529',0,'Ottery','OTTERY','Open tourer. Handed over with its sheet in September 2024.','Miles','Rufus Keel','KEE 55',NULL,'HandedOver','01A2157D-DEF1-7E20-A1A9-3F9DD40A62CA',0);
INSERT INTO Vehicles VALUES(3,NULL,'TN-88-3105',0,'Tansy','TANSY','Estate, daily use.','Miles','Dorrit Ames','D 3105 A',NULL,'OnTheRoad','01A2157D-DF9F-7A9C-855A-5E8FA5FAC4CC',0);
INSERT INTO Vehicles VALUES(4,NULL,'QL 70 0093',0,'Quillon','QUILLON','Fastback coupe, shell painted, going together.','Kilometres','Bastian Orme','',NULL,'InBuild','01A2157D-E032-7F7B-8FF6-2C1A24505452',0);
INSERT INTO Vehicles VALUES(5,NULL,'HD4-1177-L',0,'Haldor','HALDOR','Long-wheelbase 4×4, carries the mowers.','Kilometres','Ilse Marrick','IM 1177',NULL,'InBuild','01A2157D-E065-70BF-B025-03932CD7DDE0',0);
INSERT INTO Vehicles VALUES(6,NULL,'not found yet',0,'Pellow','PELLOW','Panel van, for the shop itself once the others are out.','Kilometres','the shop','',NULL,'Planned','01A2157D-E0FC-7C6A-8DB9-330622F7DEA9',0);
CREATE TABLE IF NOT EXISTS "Attachments" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_Attachments" PRIMARY KEY AUTOINCREMENT,
    "About" TEXT NOT NULL,
    "AboutUid" TEXT NOT NULL,
    "Sha256" TEXT NOT NULL,
    "FileName" TEXT NOT NULL,
    "MediaType" TEXT NOT NULL,
    "Length" INTEGER NOT NULL,
    "Caption" TEXT NOT NULL,
    "TakenEarliest" TEXT NULL,
    "TakenLatest" TEXT NULL,
    "TakenText" TEXT NULL,
    "Uid" TEXT NOT NULL,
    "Version" INTEGER NOT NULL,
    CONSTRAINT "CK_Attachments_About" CHECK ("About" IN ('Vehicle', 'Component', 'Fitment', 'OdometerChange', 'Session', 'Goal', 'IdentityNumber', 'Job', 'WorkEntry', 'OutsideWork', 'Cost', 'Supplier', 'Donor', 'DonorPiece', 'WantedPart', 'Offer', 'Plan', 'RoadTest', 'Retorque', 'Deadline', 'Decision', 'Note', 'Attachment', 'Workshop')),
    CONSTRAINT "CK_Attachments_FileName" CHECK (length(trim("FileName")) > 0),
    CONSTRAINT "CK_Attachments_Length" CHECK ("Length" >= 0),
    CONSTRAINT "CK_Attachments_Sha256" CHECK (length("Sha256") = 64 AND "Sha256" NOT GLOB '*[^0-9a-f]*'),
    CONSTRAINT "CK_Attachments_Taken" CHECK (("TakenText" IS NOT NULL OR ("TakenEarliest" IS NULL AND "TakenLatest" IS NULL)) AND ("TakenEarliest" IS NULL OR "TakenLatest" IS NULL OR "TakenEarliest" <= "TakenLatest")),
    CONSTRAINT "CK_Attachments_TakenEarliest" CHECK ("TakenEarliest" IS date("TakenEarliest")),
    CONSTRAINT "CK_Attachments_TakenLatest" CHECK ("TakenLatest" IS date("TakenLatest"))
) STRICT;
CREATE TABLE IF NOT EXISTS "Deadlines" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_Deadlines" PRIMARY KEY AUTOINCREMENT,
    "VehicleId" INTEGER NULL,
    "What" TEXT NOT NULL,
    "Day" TEXT NOT NULL,
    "Done" TEXT NULL,
    "Uid" TEXT NOT NULL,
    "Version" INTEGER NOT NULL,
    CONSTRAINT "CK_Deadlines_Day" CHECK ("Day" IS date("Day")),
    CONSTRAINT "CK_Deadlines_Done" CHECK ("Done" IS date("Done")),
    CONSTRAINT "CK_Deadlines_What" CHECK (length(trim("What")) > 0),
    CONSTRAINT "FK_Deadlines_Vehicles_VehicleId" FOREIGN KEY ("VehicleId") REFERENCES "Vehicles" ("Id") ON DELETE RESTRICT
) STRICT;
INSERT INTO Deadlines VALUES(1,1,'test station, first look','2025-05-15',NULL,'01A2157D-DECB-738B-843C-C7D95BBDA6FA',0);
CREATE TABLE IF NOT EXISTS "Decisions" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_Decisions" PRIMARY KEY AUTOINCREMENT,
    "VehicleId" INTEGER NOT NULL,
    "Date" TEXT NOT NULL,
    "What" TEXT NOT NULL,
    "Why" TEXT NOT NULL,
    "AgreedBy" TEXT NOT NULL,
    "Uid" TEXT NOT NULL,
    "Version" INTEGER NOT NULL,
    CONSTRAINT "CK_Decisions_Date" CHECK ("Date" IS date("Date")),
    CONSTRAINT "CK_Decisions_What" CHECK (length(trim("What")) > 0),
    CONSTRAINT "FK_Decisions_Vehicles_VehicleId" FOREIGN KEY ("VehicleId") REFERENCES "Vehicles" ("Id") ON DELETE RESTRICT
) STRICT;
INSERT INTO Decisions VALUES(1,1,'2024-10-27','axle between 3.23 and 3.49 instead of still taller tyres','taller tyres would reach the arches and read the speedometer low','Agnes Thorley','01A2157D-DEDC-7732-8874-6BF16FD5889C',0);
CREATE TABLE IF NOT EXISTS "IdentityNumbers" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_IdentityNumbers" PRIMARY KEY AUTOINCREMENT,
    "VehicleId" INTEGER NULL,
    "ComponentId" INTEGER NULL,
    "Identified" TEXT NOT NULL,
    "Number" TEXT NOT NULL,
    "Where" TEXT NOT NULL,
    "ReadBy" TEXT NOT NULL,
    "ReadEarliest" TEXT NULL,
    "ReadLatest" TEXT NULL,
    "ReadText" TEXT NULL,
    "Uid" TEXT NOT NULL,
    "Version" INTEGER NOT NULL,
    CONSTRAINT "CK_IdentityNumbers_Identified" CHECK ("Identified" IN ('Chassis', 'Body', 'Engine', 'Gearbox', 'TransferCase', 'FrontAxle', 'RearAxle', 'Casting', 'DateCode', 'Other')),
    CONSTRAINT "CK_IdentityNumbers_Number" CHECK (length(trim("Number")) > 0),
    CONSTRAINT "CK_IdentityNumbers_Owner" CHECK (("VehicleId" IS NULL) + ("ComponentId" IS NULL) = 1),
    CONSTRAINT "CK_IdentityNumbers_Read" CHECK (("ReadText" IS NOT NULL OR ("ReadEarliest" IS NULL AND "ReadLatest" IS NULL)) AND ("ReadEarliest" IS NULL OR "ReadLatest" IS NULL OR "ReadEarliest" <= "ReadLatest")),
    CONSTRAINT "CK_IdentityNumbers_ReadEarliest" CHECK ("ReadEarliest" IS date("ReadEarliest")),
    CONSTRAINT "CK_IdentityNumbers_ReadLatest" CHECK ("ReadLatest" IS date("ReadLatest")),
    CONSTRAINT "FK_IdentityNumbers_Components_ComponentId" FOREIGN KEY ("ComponentId") REFERENCES "Components" ("Id") ON DELETE RESTRICT,
    CONSTRAINT "FK_IdentityNumbers_Vehicles_VehicleId" FOREIGN KEY ("VehicleId") REFERENCES "Vehicles" ("Id") ON DELETE RESTRICT
) STRICT;
CREATE TABLE IF NOT EXISTS "Notes" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_Notes" PRIMARY KEY AUTOINCREMENT,
    "About" TEXT NOT NULL,
    "AboutUid" TEXT NOT NULL,
    "Date" TEXT NOT NULL,
    "Title" TEXT NOT NULL,
    "Body" TEXT NOT NULL,
    "Uid" TEXT NOT NULL,
    "Version" INTEGER NOT NULL,
    CONSTRAINT "CK_Notes_About" CHECK ("About" IN ('Vehicle', 'Component', 'Fitment', 'OdometerChange', 'Session', 'Goal', 'IdentityNumber', 'Job', 'WorkEntry', 'OutsideWork', 'Cost', 'Supplier', 'Donor', 'DonorPiece', 'WantedPart', 'Offer', 'Plan', 'RoadTest', 'Retorque', 'Deadline', 'Decision', 'Note', 'Attachment', 'Workshop')),
    CONSTRAINT "CK_Notes_Date" CHECK ("Date" IS date("Date")),
    CONSTRAINT "CK_Notes_Text" CHECK (length(trim("Title")) + length(trim("Body")) > 0)
) STRICT;
INSERT INTO Notes VALUES(1,'Supplier','01A2157D-D81B-7CC5-924A-CB1EE3F40E82','2024-10-26','tags','Tags there have been moved between housings. Count before paying.','01A2157D-D871-7492-932A-F06631A8AB8F',0);
INSERT INTO Notes VALUES(2,'Job','01A2157D-DE51-77D6-BFE5-46368B9FE027','2024-10-27','before lifting','Two stands under the frame, not the axle. Ask Piet for a Saturday.','01A2157D-DEEC-7B4A-A675-6CF0D6B2C589',0);
CREATE TABLE IF NOT EXISTS "OdometerChanges" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_OdometerChanges" PRIMARY KEY AUTOINCREMENT,
    "VehicleId" INTEGER NOT NULL,
    "How" TEXT NOT NULL,
    "Day" TEXT NOT NULL,
    "Order" INTEGER NOT NULL,
    "Reason" TEXT NOT NULL,
    "FirstOdometerMetres" REAL NULL,
    "FirstOdometerText" TEXT NULL,
    "FirstOdometerUnit" TEXT NULL,
    "LastOdometerMetres" REAL NULL,
    "LastOdometerText" TEXT NULL,
    "LastOdometerUnit" TEXT NULL,
    "Uid" TEXT NOT NULL,
    "Version" INTEGER NOT NULL,
    CONSTRAINT "CK_OdometerChanges_Day" CHECK ("Day" IS date("Day")),
    CONSTRAINT "CK_OdometerChanges_FirstOdometer" CHECK (("FirstOdometerMetres" IS NULL) + ("FirstOdometerUnit" IS NULL) + ("FirstOdometerText" IS NULL) IN (0, 3)),
    CONSTRAINT "CK_OdometerChanges_FirstOdometerMetres" CHECK ("FirstOdometerMetres" BETWEEN 0 AND 10000000000),
    CONSTRAINT "CK_OdometerChanges_How" CHECK ("How" IN ('Replaced', 'Reset', 'RolledOver')),
    CONSTRAINT "CK_OdometerChanges_LastOdometer" CHECK (("LastOdometerMetres" IS NULL) + ("LastOdometerUnit" IS NULL) + ("LastOdometerText" IS NULL) IN (0, 3)),
    CONSTRAINT "CK_OdometerChanges_LastOdometerMetres" CHECK ("LastOdometerMetres" BETWEEN 0 AND 10000000000),
    CONSTRAINT "CK_OdometerChanges_Starts" CHECK ("FirstOdometerMetres" IS NOT NULL),
    CONSTRAINT "FK_OdometerChanges_Vehicles_VehicleId" FOREIGN KEY ("VehicleId") REFERENCES "Vehicles" ("Id") ON DELETE RESTRICT
) STRICT;
CREATE TABLE IF NOT EXISTS "Plans" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_Plans" PRIMARY KEY AUTOINCREMENT,
    "VehicleId" INTEGER NOT NULL,
    "Name" TEXT NOT NULL,
    "Date" TEXT NOT NULL,
    "State" TEXT NOT NULL,
    "Reason" TEXT NOT NULL,
    "Uid" TEXT NOT NULL,
    "Version" INTEGER NOT NULL,
    CONSTRAINT "CK_Plans_Date" CHECK ("Date" IS date("Date")),
    CONSTRAINT "CK_Plans_Name" CHECK (length(trim("Name")) > 0),
    CONSTRAINT "CK_Plans_Rejected" CHECK ("State" <> 'Rejected' OR length(trim("Reason")) > 0),
    CONSTRAINT "CK_Plans_State" CHECK ("State" IN ('Open', 'Kept', 'Rejected')),
    CONSTRAINT "FK_Plans_Vehicles_VehicleId" FOREIGN KEY ("VehicleId") REFERENCES "Vehicles" ("Id") ON DELETE RESTRICT
) STRICT;
CREATE TABLE IF NOT EXISTS "Retorques" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_Retorques" PRIMARY KEY AUTOINCREMENT,
    "VehicleId" INTEGER NOT NULL,
    "Date" TEXT NOT NULL,
    "What" TEXT NOT NULL,
    "Initials" TEXT NOT NULL,
    "TorqueSi" REAL NULL,
    "TorqueSource" TEXT NULL,
    "TorqueText" TEXT NULL,
    "TorqueUnit" TEXT NULL,
    "Uid" TEXT NOT NULL,
    "Version" INTEGER NOT NULL,
    CONSTRAINT "CK_Retorques_Date" CHECK ("Date" IS date("Date")),
    CONSTRAINT "CK_Retorques_Initials" CHECK (length(trim("Initials")) > 0),
    CONSTRAINT "CK_Retorques_Torque" CHECK (("TorqueSi" IS NULL) + ("TorqueUnit" IS NULL) + ("TorqueText" IS NULL) + ("TorqueSource" IS NULL) IN (0, 4)),
    CONSTRAINT "CK_Retorques_TorqueSi" CHECK ("TorqueSi" BETWEEN 0.0 AND 5000.0),
    CONSTRAINT "CK_Retorques_TorqueSource" CHECK ("TorqueSource" IN ('TeethCounted', 'Measured', 'MakersData', 'Tag', 'OwnersWord', 'Assumed')),
    CONSTRAINT "CK_Retorques_What" CHECK (length(trim("What")) > 0),
    CONSTRAINT "FK_Retorques_Vehicles_VehicleId" FOREIGN KEY ("VehicleId") REFERENCES "Vehicles" ("Id") ON DELETE RESTRICT
) STRICT;
CREATE TABLE IF NOT EXISTS "RoadTests" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_RoadTests" PRIMARY KEY AUTOINCREMENT,
    "VehicleId" INTEGER NOT NULL,
    "Date" TEXT NOT NULL,
    "Gear" TEXT NOT NULL,
    "Temperatures" TEXT NOT NULL,
    "Vibration" TEXT NOT NULL,
    "Noises" TEXT NOT NULL,
    "Defects" TEXT NOT NULL,
    "Fix" TEXT NOT NULL,
    "EngineSpeedSi" REAL NULL,
    "EngineSpeedSource" TEXT NULL,
    "EngineSpeedText" TEXT NULL,
    "EngineSpeedUnit" TEXT NULL,
    "OdometerMetres" REAL NULL,
    "OdometerText" TEXT NULL,
    "OdometerUnit" TEXT NULL,
    "SpeedSi" REAL NULL,
    "SpeedSource" TEXT NULL,
    "SpeedText" TEXT NULL,
    "SpeedUnit" TEXT NULL,
    "Uid" TEXT NOT NULL,
    "Version" INTEGER NOT NULL,
    CONSTRAINT "CK_RoadTests_Date" CHECK ("Date" IS date("Date")),
    CONSTRAINT "CK_RoadTests_EngineSpeed" CHECK (("EngineSpeedSi" IS NULL) + ("EngineSpeedUnit" IS NULL) + ("EngineSpeedText" IS NULL) + ("EngineSpeedSource" IS NULL) IN (0, 4)),
    CONSTRAINT "CK_RoadTests_EngineSpeedSi" CHECK ("EngineSpeedSi" BETWEEN 0.0 AND 1000.0),
    CONSTRAINT "CK_RoadTests_EngineSpeedSource" CHECK ("EngineSpeedSource" IN ('TeethCounted', 'Measured', 'MakersData', 'Tag', 'OwnersWord', 'Assumed')),
    CONSTRAINT "CK_RoadTests_Odometer" CHECK (("OdometerMetres" IS NULL) + ("OdometerUnit" IS NULL) + ("OdometerText" IS NULL) IN (0, 3)),
    CONSTRAINT "CK_RoadTests_OdometerMetres" CHECK ("OdometerMetres" BETWEEN 0 AND 10000000000),
    CONSTRAINT "CK_RoadTests_Speed" CHECK (("SpeedSi" IS NULL) + ("SpeedUnit" IS NULL) + ("SpeedText" IS NULL) + ("SpeedSource" IS NULL) IN (0, 4)),
    CONSTRAINT "CK_RoadTests_SpeedSi" CHECK ("SpeedSi" BETWEEN 0.0 AND 1000.0),
    CONSTRAINT "CK_RoadTests_SpeedSource" CHECK ("SpeedSource" IN ('TeethCounted', 'Measured', 'MakersData', 'Tag', 'OwnersWord', 'Assumed')),
    CONSTRAINT "FK_RoadTests_Vehicles_VehicleId" FOREIGN KEY ("VehicleId") REFERENCES "Vehicles" ("Id") ON DELETE RESTRICT
) STRICT;
INSERT INTO RoadTests VALUES(1,1,'2024-10-19','4','','','none from the axle; the engine drowns it','far too busy: this is no 3.90','',58.333333333333335702,'OwnersWord','3500 rpm','rev/min',NULL,NULL,NULL,27.777777777777778566,'Measured','100 km/h','km/h','01A2157D-DDA8-740B-A615-4D271E1E0C2F',0);
CREATE TABLE IF NOT EXISTS "Suppliers" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_Suppliers" PRIMARY KEY AUTOINCREMENT,
    "Name" TEXT NOT NULL,
    "Contact" TEXT NOT NULL,
    "GoodFor" TEXT NOT NULL,
    "Notes" TEXT NOT NULL,
    "Uid" TEXT NOT NULL,
    "Version" INTEGER NOT NULL,
    CONSTRAINT "CK_Suppliers_Name" CHECK (length(trim("Name")) > 0)
) STRICT;
INSERT INTO Suppliers VALUES(1,'Tolland yard','row 6, ask for Bartle; closed on Mondays','axles, gearboxes','','01A2157D-D81B-7CC5-924A-CB1EE3F40E82',0);
INSERT INTO Suppliers VALUES(2,'Ambery Balancing','two weeks, cash','propshafts, balancing','','01A2157D-D83A-76E1-8544-C9574C4046B4',0);
CREATE TABLE IF NOT EXISTS "Traits" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_Traits" PRIMARY KEY AUTOINCREMENT,
    "ComponentId" INTEGER NOT NULL,
    "Trait" TEXT NOT NULL,
    "Text" TEXT NOT NULL,
    CONSTRAINT "CK_Traits_ParkingBrake" CHECK ("Trait" <> 'ParkingBrake' OR "Text" IN ('Fitted', 'Absent')),
    CONSTRAINT "CK_Traits_Plate" CHECK ("Trait" <> 'Plate' OR "Text" IN ('Flywheel', 'Flexplate')),
    CONSTRAINT "CK_Traits_ShiftLinkage" CHECK ("Trait" <> 'ShiftLinkage' OR "Text" IN ('Fitted', 'Absent')),
    CONSTRAINT "CK_Traits_SpeedometerFeed" CHECK ("Trait" <> 'SpeedometerFeed' OR "Text" IN ('None', 'Cable', 'Pulses')),
    CONSTRAINT "CK_Traits_Starter" CHECK ("Trait" <> 'Starter' OR "Text" IN ('Left', 'Right')),
    CONSTRAINT "CK_Traits_Text" CHECK (length(trim("Text")) > 0),
    CONSTRAINT "CK_Traits_Trait" CHECK ("Trait" IN ('BellHousing', 'Plate', 'Starter', 'Turns', 'InputSpline', 'DiscSpline', 'Output', 'FrontOutput', 'SpeedometerFeed', 'ParkingBrake', 'ShiftLinkage', 'PinionFlange', 'FrontEnd', 'RearEnd')),
    CONSTRAINT "CK_Traits_Turns" CHECK ("Trait" <> 'Turns' OR "Text" IN ('Clockwise', 'Anticlockwise')),
    CONSTRAINT "FK_Traits_Components_ComponentId" FOREIGN KEY ("ComponentId") REFERENCES "Components" ("Id")
) STRICT;
INSERT INTO Traits VALUES(1,1,'BellHousing','Corvane six');
INSERT INTO Traits VALUES(2,1,'Plate','Flywheel');
INSERT INTO Traits VALUES(3,1,'Starter','Right');
INSERT INTO Traits VALUES(4,1,'Turns','Clockwise');
INSERT INTO Traits VALUES(5,2,'BellHousing','Corvane six');
INSERT INTO Traits VALUES(6,2,'InputSpline','26 × 1 in');
INSERT INTO Traits VALUES(7,2,'DiscSpline','26 × 1 in');
INSERT INTO Traits VALUES(8,2,'Starter','Right');
INSERT INTO Traits VALUES(9,2,'Turns','Clockwise');
INSERT INTO Traits VALUES(10,2,'ShiftLinkage','Fitted');
INSERT INTO Traits VALUES(11,3,'ParkingBrake','Fitted');
INSERT INTO Traits VALUES(12,4,'ParkingBrake','Fitted');
INSERT INTO Traits VALUES(13,7,'BellHousing','Corvane four');
INSERT INTO Traits VALUES(14,7,'Plate','Flywheel');
INSERT INTO Traits VALUES(15,7,'Starter','Right');
INSERT INTO Traits VALUES(16,7,'Turns','Clockwise');
INSERT INTO Traits VALUES(17,8,'BellHousing','Corvane four');
INSERT INTO Traits VALUES(18,8,'InputSpline','26 × 1 in');
INSERT INTO Traits VALUES(19,8,'DiscSpline','26 × 1 in');
INSERT INTO Traits VALUES(20,8,'Starter','Right');
INSERT INTO Traits VALUES(21,8,'Turns','Clockwise');
INSERT INTO Traits VALUES(22,8,'ShiftLinkage','Fitted');
INSERT INTO Traits VALUES(23,9,'Output','flange 4 × 76 mm');
INSERT INTO Traits VALUES(24,10,'ParkingBrake','Fitted');
INSERT INTO Traits VALUES(25,10,'PinionFlange','flange 4 × 76 mm');
INSERT INTO Traits VALUES(26,11,'ParkingBrake','Fitted');
INSERT INTO Traits VALUES(27,11,'PinionFlange','flange 4 × 76 mm');
INSERT INTO Traits VALUES(28,12,'FrontEnd','flange 4 × 76 mm');
INSERT INTO Traits VALUES(29,12,'RearEnd','flange 4 × 76 mm');
INSERT INTO Traits VALUES(30,14,'BellHousing','Corvane four');
INSERT INTO Traits VALUES(31,14,'Plate','Flywheel');
INSERT INTO Traits VALUES(32,14,'Starter','Right');
INSERT INTO Traits VALUES(33,14,'Turns','Clockwise');
INSERT INTO Traits VALUES(34,15,'BellHousing','Corvane four');
INSERT INTO Traits VALUES(35,15,'InputSpline','26 × 1 in');
INSERT INTO Traits VALUES(36,15,'DiscSpline','26 × 1 in');
INSERT INTO Traits VALUES(37,15,'Starter','Right');
INSERT INTO Traits VALUES(38,15,'Turns','Clockwise');
INSERT INTO Traits VALUES(39,15,'ShiftLinkage','Fitted');
INSERT INTO Traits VALUES(40,16,'SpeedometerFeed','Cable');
INSERT INTO Traits VALUES(41,16,'BellHousing','Corvane four');
INSERT INTO Traits VALUES(42,16,'InputSpline','26 × 1 in');
INSERT INTO Traits VALUES(43,16,'DiscSpline','26 × 1 in');
INSERT INTO Traits VALUES(44,16,'Starter','Right');
INSERT INTO Traits VALUES(45,16,'Turns','Clockwise');
INSERT INTO Traits VALUES(46,16,'ShiftLinkage','Fitted');
INSERT INTO Traits VALUES(47,17,'ParkingBrake','Fitted');
INSERT INTO Traits VALUES(48,19,'SpeedometerFeed','Cable');
INSERT INTO Traits VALUES(49,21,'BellHousing','Corvane six');
INSERT INTO Traits VALUES(50,21,'Plate','Flywheel');
INSERT INTO Traits VALUES(51,21,'Starter','Right');
INSERT INTO Traits VALUES(52,21,'Turns','Clockwise');
INSERT INTO Traits VALUES(53,22,'BellHousing','Corvane six');
INSERT INTO Traits VALUES(54,22,'InputSpline','26 × 1 in');
INSERT INTO Traits VALUES(55,22,'DiscSpline','10 × 1 1/8 in');
INSERT INTO Traits VALUES(56,22,'Starter','Right');
INSERT INTO Traits VALUES(57,22,'Turns','Clockwise');
INSERT INTO Traits VALUES(58,22,'ShiftLinkage','Fitted');
INSERT INTO Traits VALUES(59,23,'ParkingBrake','Fitted');
INSERT INTO Traits VALUES(60,25,'BellHousing','Corvane industrial');
INSERT INTO Traits VALUES(61,25,'Plate','Flywheel');
INSERT INTO Traits VALUES(62,25,'Starter','Right');
INSERT INTO Traits VALUES(63,25,'Turns','Clockwise');
INSERT INTO Traits VALUES(64,26,'BellHousing','Corvane industrial');
INSERT INTO Traits VALUES(65,26,'InputSpline','10 × 1 1/8 in');
INSERT INTO Traits VALUES(66,26,'DiscSpline','10 × 1 1/8 in');
INSERT INTO Traits VALUES(67,26,'Starter','Right');
INSERT INTO Traits VALUES(68,26,'Turns','Clockwise');
INSERT INTO Traits VALUES(69,26,'ShiftLinkage','Fitted');
INSERT INTO Traits VALUES(70,27,'ParkingBrake','Fitted');
CREATE TABLE IF NOT EXISTS "WantedParts" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_WantedParts" PRIMARY KEY AUTOINCREMENT,
    "VehicleId" INTEGER NOT NULL,
    "Kind" TEXT NOT NULL,
    "Title" TEXT NOT NULL,
    "Deadline" TEXT NULL,
    "State" TEXT NOT NULL,
    "DroppedFor" TEXT NOT NULL,
    "Notes" TEXT NOT NULL,
    "MostCurrency" TEXT NULL,
    "MostMinor" INTEGER NULL,
    "Uid" TEXT NOT NULL,
    "Version" INTEGER NOT NULL,
    CONSTRAINT "CK_WantedParts_Deadline" CHECK ("Deadline" IS date("Deadline")),
    CONSTRAINT "CK_WantedParts_Dropped" CHECK ("State" <> 'Dropped' OR length(trim("DroppedFor")) > 0),
    CONSTRAINT "CK_WantedParts_Kind" CHECK ("Kind" IN ('Engine', 'Transmission', 'Overdrive', 'TransferCase', 'Propshaft', 'Axle', 'Tyres', 'Wheels', 'Speedometer', 'Other')),
    CONSTRAINT "CK_WantedParts_Most" CHECK (("MostMinor" IS NULL) + ("MostCurrency" IS NULL) IN (0, 2)),
    CONSTRAINT "CK_WantedParts_MostCurrency" CHECK ("MostCurrency" GLOB '[A-Z][A-Z][A-Z]'),
    CONSTRAINT "CK_WantedParts_MostMinor" CHECK ("MostMinor" BETWEEN -1000000000000000 AND 1000000000000000),
    CONSTRAINT "CK_WantedParts_State" CHECK ("State" IN ('Hunting', 'Found', 'Dropped')),
    CONSTRAINT "CK_WantedParts_Title" CHECK (length(trim("Title")) > 0),
    CONSTRAINT "FK_WantedParts_Vehicles_VehicleId" FOREIGN KEY ("VehicleId") REFERENCES "Vehicles" ("Id") ON DELETE RESTRICT
) STRICT;
INSERT INTO WantedParts VALUES(1,1,'Axle','longer axle',NULL,'Hunting','','','EUR',35000,'01A2157D-DDD1-77D5-A968-61536F40E07C',0);
CREATE TABLE IF NOT EXISTS "Workshops" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_Workshops" PRIMARY KEY AUTOINCREMENT,
    "Name" TEXT NOT NULL,
    "Address" TEXT NOT NULL,
    "Currency" TEXT NOT NULL,
    "Uid" TEXT NOT NULL,
    "Version" INTEGER NOT NULL,
    CONSTRAINT "CK_Workshops_Currency" CHECK ("Currency" GLOB '[A-Z][A-Z][A-Z]')
) STRICT;
INSERT INTO Workshops VALUES(1,'Thorley''s shed','Mill Lane 4, Ambery','EUR','01A2157D-D574-7F73-A056-191EC515EF24',0);
CREATE TABLE IF NOT EXISTS "PlannedChanges" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_PlannedChanges" PRIMARY KEY AUTOINCREMENT,
    "PlanId" INTEGER NOT NULL,
    "Position" TEXT NOT NULL,
    "Listed" TEXT NOT NULL,
    "ComponentId" INTEGER NULL,
    CONSTRAINT "CK_PlannedChanges_Position" CHECK ("Position" IN ('Engine', 'Transmission', 'Overdrive', 'TransferCase', 'Propshaft', 'FrontPropshaft', 'RearAxle', 'FrontAxle', 'Tyres', 'Speedometer')),
    CONSTRAINT "CK_PlannedChanges_What" CHECK ("ComponentId" IS NOT NULL OR length(trim("Listed")) > 0),
    CONSTRAINT "FK_PlannedChanges_Components_ComponentId" FOREIGN KEY ("ComponentId") REFERENCES "Components" ("Id") ON DELETE RESTRICT,
    CONSTRAINT "FK_PlannedChanges_Plans_PlanId" FOREIGN KEY ("PlanId") REFERENCES "Plans" ("Id")
) STRICT;
CREATE TABLE IF NOT EXISTS "Donors" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_Donors" PRIMARY KEY AUTOINCREMENT,
    "Name" TEXT NOT NULL,
    "ChassisNumber" TEXT NOT NULL,
    "SellerId" INTEGER NULL,
    "Fate" TEXT NOT NULL,
    "Place" TEXT NOT NULL,
    "Notes" TEXT NOT NULL,
    "BoughtEarliest" TEXT NULL,
    "BoughtLatest" TEXT NULL,
    "BoughtText" TEXT NULL,
    "PriceCurrency" TEXT NULL,
    "PriceMinor" INTEGER NULL,
    "Uid" TEXT NOT NULL,
    "Version" INTEGER NOT NULL,
    CONSTRAINT "CK_Donors_Bought" CHECK (("BoughtText" IS NOT NULL OR ("BoughtEarliest" IS NULL AND "BoughtLatest" IS NULL)) AND ("BoughtEarliest" IS NULL OR "BoughtLatest" IS NULL OR "BoughtEarliest" <= "BoughtLatest")),
    CONSTRAINT "CK_Donors_BoughtEarliest" CHECK ("BoughtEarliest" IS date("BoughtEarliest")),
    CONSTRAINT "CK_Donors_BoughtLatest" CHECK ("BoughtLatest" IS date("BoughtLatest")),
    CONSTRAINT "CK_Donors_Fate" CHECK ("Fate" IN ('Undecided', 'Keep', 'Sell', 'Scrap', 'Gone')),
    CONSTRAINT "CK_Donors_Name" CHECK (length(trim("Name")) > 0),
    CONSTRAINT "CK_Donors_Price" CHECK (("PriceMinor" IS NULL) + ("PriceCurrency" IS NULL) IN (0, 2)),
    CONSTRAINT "CK_Donors_PriceCurrency" CHECK ("PriceCurrency" GLOB '[A-Z][A-Z][A-Z]'),
    CONSTRAINT "CK_Donors_PriceMinor" CHECK ("PriceMinor" BETWEEN -1000000000000000 AND 1000000000000000),
    CONSTRAINT "FK_Donors_Suppliers_SellerId" FOREIGN KEY ("SellerId") REFERENCES "Suppliers" ("Id") ON DELETE RESTRICT
) STRICT;
INSERT INTO Donors VALUES(1,'Wexcombe delivery van','WX-DV-11853',1,'Sell','behind the shed','','2024-03-01','2024-05-31','spring 2024','EUR',64000,'01A2157D-D891-70F6-89CC-EA6CB3B56D43',0);
CREATE TABLE IF NOT EXISTS "Jobs" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_Jobs" PRIMARY KEY AUTOINCREMENT,
    "VehicleId" INTEGER NOT NULL,
    "Title" TEXT NOT NULL,
    "Description" TEXT NOT NULL,
    "State" TEXT NOT NULL,
    "Due" TEXT NULL,
    "BeforeHandover" INTEGER NOT NULL,
    "BlockedBy" TEXT NOT NULL,
    "WaitsForId" INTEGER NULL,
    "Uid" TEXT NOT NULL,
    "Version" INTEGER NOT NULL,
    CONSTRAINT "CK_Jobs_Due" CHECK ("Due" IS date("Due")),
    CONSTRAINT "CK_Jobs_State" CHECK ("State" IN ('ToDo', 'UnderWay', 'Done', 'Dropped')),
    CONSTRAINT "CK_Jobs_Title" CHECK (length(trim("Title")) > 0),
    CONSTRAINT "FK_Jobs_Vehicles_VehicleId" FOREIGN KEY ("VehicleId") REFERENCES "Vehicles" ("Id") ON DELETE RESTRICT,
    CONSTRAINT "FK_Jobs_WantedParts_WaitsForId" FOREIGN KEY ("WaitsForId") REFERENCES "WantedParts" ("Id") ON DELETE RESTRICT
) STRICT;
INSERT INTO Jobs VALUES(1,1,'fit the longer axle','','ToDo','2025-04-01',1,'',1,'01A2157D-DE51-77D6-BFE5-46368B9FE027',0);
INSERT INTO Jobs VALUES(2,1,'rear brake lines','','UnderWay',NULL,1,'',NULL,'01A2157D-DE7A-7A3F-845B-05DA621EA0E6',0);
CREATE TABLE IF NOT EXISTS "Offers" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_Offers" PRIMARY KEY AUTOINCREMENT,
    "WantedPartId" INTEGER NOT NULL,
    "What" TEXT NOT NULL,
    "Place" TEXT NOT NULL,
    "SupplierId" INTEGER NULL,
    "Claimed" TEXT NOT NULL,
    "Contact" TEXT NOT NULL,
    "Seen" TEXT NOT NULL,
    "Expires" TEXT NULL,
    "Notes" TEXT NOT NULL,
    "PriceCurrency" TEXT NULL,
    "PriceMinor" INTEGER NULL,
    "Uid" TEXT NOT NULL,
    "Version" INTEGER NOT NULL,
    CONSTRAINT "CK_Offers_Expires" CHECK ("Expires" IS date("Expires")),
    CONSTRAINT "CK_Offers_Forward" CHECK ("Expires" >= "Seen"),
    CONSTRAINT "CK_Offers_Price" CHECK (("PriceMinor" IS NULL) + ("PriceCurrency" IS NULL) IN (0, 2)),
    CONSTRAINT "CK_Offers_PriceCurrency" CHECK ("PriceCurrency" GLOB '[A-Z][A-Z][A-Z]'),
    CONSTRAINT "CK_Offers_PriceMinor" CHECK ("PriceMinor" BETWEEN -1000000000000000 AND 1000000000000000),
    CONSTRAINT "CK_Offers_Seen" CHECK ("Seen" IS date("Seen")),
    CONSTRAINT "CK_Offers_What" CHECK (length(trim("What")) > 0),
    CONSTRAINT "FK_Offers_Suppliers_SupplierId" FOREIGN KEY ("SupplierId") REFERENCES "Suppliers" ("Id") ON DELETE RESTRICT,
    CONSTRAINT "FK_Offers_WantedParts_WantedPartId" FOREIGN KEY ("WantedPartId") REFERENCES "WantedParts" ("Id") ON DELETE RESTRICT
) STRICT;
INSERT INTO Offers VALUES(1,1,'axle from a late pickup, cover off','advert, Ambery board',NULL,'3.36','evenings','2024-11-09',NULL,'37 teeth painted on the cover; 1070 between the perches, he says','EUR',28000,'01A2157D-DE16-71CE-B155-E19F055F048B',0);
INSERT INTO Offers VALUES(2,1,'axle, row 2, no vehicle with it','Tolland yard',1,'4.10','','2024-11-02',NULL,'','EUR',12000,'01A2157D-DE4C-77D2-AF59-C798D5FBDDAC',0);
CREATE TABLE IF NOT EXISTS "WantedMustHaves" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_WantedMustHaves" PRIMARY KEY AUTOINCREMENT,
    "WantedPartId" INTEGER NOT NULL,
    "Ordinal" INTEGER NOT NULL,
    "What" TEXT NOT NULL,
    "Text" TEXT NOT NULL,
    CONSTRAINT "CK_WantedMustHaves_Ordinal" CHECK ("Ordinal" >= 1),
    CONSTRAINT "CK_WantedMustHaves_Text" CHECK (length(trim("Text")) > 0),
    CONSTRAINT "CK_WantedMustHaves_What" CHECK (length(trim("What")) > 0),
    CONSTRAINT "FK_WantedMustHaves_WantedParts_WantedPartId" FOREIGN KEY ("WantedPartId") REFERENCES "WantedParts" ("Id")
) STRICT;
CREATE TABLE IF NOT EXISTS "WantedWindows" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_WantedWindows" PRIMARY KEY AUTOINCREMENT,
    "WantedPartId" INTEGER NOT NULL,
    "Ordinal" INTEGER NOT NULL,
    "Quantity" TEXT NOT NULL,
    "Low" TEXT NOT NULL,
    "High" TEXT NOT NULL,
    "LowSi" REAL NULL,
    "HighSi" REAL NULL,
    CONSTRAINT "CK_WantedWindows_Ordinal" CHECK ("Ordinal" >= 1),
    CONSTRAINT "CK_WantedWindows_Quantity" CHECK ("Quantity" IN ('AxleRatio', 'TopGearRatio', 'OverdriveRatio', 'LowRangeRatio', 'Circumference', 'TyreDiameter', 'Width', 'Length')),
    CONSTRAINT "CK_WantedWindows_Sides" CHECK (("LowSi" IS NOT NULL OR "HighSi" IS NOT NULL) AND ("LowSi" IS NULL OR "HighSi" IS NULL OR "LowSi" <= "HighSi")),
    CONSTRAINT "FK_WantedWindows_WantedParts_WantedPartId" FOREIGN KEY ("WantedPartId") REFERENCES "WantedParts" ("Id")
) STRICT;
INSERT INTO WantedWindows VALUES(1,1,1,'AxleRatio','3.23','3.49',3.2299999999999999822,3.4900000000000002131);
CREATE TABLE IF NOT EXISTS "DonorPieces" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_DonorPieces" PRIMARY KEY AUTOINCREMENT,
    "DonorId" INTEGER NOT NULL,
    "What" TEXT NOT NULL,
    "State" TEXT NOT NULL,
    "ComponentId" INTEGER NULL,
    "DayEarliest" TEXT NULL,
    "DayLatest" TEXT NULL,
    "DayText" TEXT NULL,
    "IncomeCurrency" TEXT NULL,
    "IncomeMinor" INTEGER NULL,
    "Uid" TEXT NOT NULL,
    "Version" INTEGER NOT NULL,
    CONSTRAINT "CK_DonorPieces_Day" CHECK (("DayText" IS NOT NULL OR ("DayEarliest" IS NULL AND "DayLatest" IS NULL)) AND ("DayEarliest" IS NULL OR "DayLatest" IS NULL OR "DayEarliest" <= "DayLatest")),
    CONSTRAINT "CK_DonorPieces_DayEarliest" CHECK ("DayEarliest" IS date("DayEarliest")),
    CONSTRAINT "CK_DonorPieces_DayLatest" CHECK ("DayLatest" IS date("DayLatest")),
    CONSTRAINT "CK_DonorPieces_Income" CHECK (("IncomeMinor" IS NULL) + ("IncomeCurrency" IS NULL) IN (0, 2)),
    CONSTRAINT "CK_DonorPieces_IncomeCurrency" CHECK ("IncomeCurrency" GLOB '[A-Z][A-Z][A-Z]'),
    CONSTRAINT "CK_DonorPieces_IncomeMinor" CHECK ("IncomeMinor" BETWEEN -1000000000000000 AND 1000000000000000),
    CONSTRAINT "CK_DonorPieces_State" CHECK ("State" IN ('Remains', 'Taken', 'Sold', 'Scrapped')),
    CONSTRAINT "CK_DonorPieces_What" CHECK (length(trim("What")) > 0),
    CONSTRAINT "FK_DonorPieces_Components_ComponentId" FOREIGN KEY ("ComponentId") REFERENCES "Components" ("Id") ON DELETE RESTRICT,
    CONSTRAINT "FK_DonorPieces_Donors_DonorId" FOREIGN KEY ("DonorId") REFERENCES "Donors" ("Id") ON DELETE RESTRICT
) STRICT;
INSERT INTO DonorPieces VALUES(1,1,'engine with gearbox','Taken',NULL,'2024-03-09','2024-03-09','9 March 2024',NULL,NULL,'01A2157D-D8F7-7DA0-AF91-0F8D8AA0C2DE',0);
INSERT INTO DonorPieces VALUES(2,1,'front seats','Sold',NULL,NULL,NULL,NULL,'EUR',9000,'01A2157D-D941-7E4F-B9FD-167220C3E30A',0);
INSERT INTO DonorPieces VALUES(3,1,'rear axle, bent','Remains',NULL,NULL,NULL,NULL,NULL,NULL,'01A2157D-D947-7F88-9F19-82CBEFFC240E',0);
CREATE TABLE IF NOT EXISTS "Costs" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_Costs" PRIMARY KEY AUTOINCREMENT,
    "VehicleId" INTEGER NOT NULL,
    "JobId" INTEGER NULL,
    "Date" TEXT NOT NULL,
    "What" TEXT NOT NULL,
    "SupplierId" INTEGER NULL,
    "ComponentId" INTEGER NULL,
    "ReceiptId" INTEGER NULL,
    "AmountCurrency" TEXT NULL,
    "AmountMinor" INTEGER NULL,
    "Uid" TEXT NOT NULL,
    "Version" INTEGER NOT NULL,
    CONSTRAINT "CK_Costs_Amount" CHECK (("AmountMinor" IS NULL) + ("AmountCurrency" IS NULL) IN (0, 2)),
    CONSTRAINT "CK_Costs_AmountCurrency" CHECK ("AmountCurrency" GLOB '[A-Z][A-Z][A-Z]'),
    CONSTRAINT "CK_Costs_AmountMinor" CHECK ("AmountMinor" BETWEEN -1000000000000000 AND 1000000000000000),
    CONSTRAINT "CK_Costs_Date" CHECK ("Date" IS date("Date")),
    CONSTRAINT "CK_Costs_Spent" CHECK ("AmountMinor" IS NOT NULL),
    CONSTRAINT "CK_Costs_What" CHECK (length(trim("What")) > 0),
    CONSTRAINT "FK_Costs_Attachments_ReceiptId" FOREIGN KEY ("ReceiptId") REFERENCES "Attachments" ("Id") ON DELETE RESTRICT,
    CONSTRAINT "FK_Costs_Components_ComponentId" FOREIGN KEY ("ComponentId") REFERENCES "Components" ("Id") ON DELETE RESTRICT,
    CONSTRAINT "FK_Costs_Jobs_JobId" FOREIGN KEY ("JobId") REFERENCES "Jobs" ("Id") ON DELETE RESTRICT,
    CONSTRAINT "FK_Costs_Suppliers_SupplierId" FOREIGN KEY ("SupplierId") REFERENCES "Suppliers" ("Id") ON DELETE RESTRICT,
    CONSTRAINT "FK_Costs_Vehicles_VehicleId" FOREIGN KEY ("VehicleId") REFERENCES "Vehicles" ("Id") ON DELETE RESTRICT
) STRICT;
INSERT INTO Costs VALUES(1,1,2,'2024-11-15','brake line and unions',NULL,NULL,NULL,'EUR',4860,'01A2157D-DEA7-7999-8D74-6A3D2E8581A1',0);
INSERT INTO Costs VALUES(2,1,NULL,'2024-10-12','yard axle',1,NULL,NULL,'EUR',15000,'01A2157D-DEC6-7BB1-B867-C0FB533E44B5',0);
CREATE TABLE IF NOT EXISTS "OutsideWorks" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_OutsideWorks" PRIMARY KEY AUTOINCREMENT,
    "JobId" INTEGER NOT NULL,
    "SupplierId" INTEGER NOT NULL,
    "What" TEXT NOT NULL,
    "Sent" TEXT NOT NULL,
    "Promised" TEXT NULL,
    "Back" TEXT NULL,
    "Certificate" TEXT NOT NULL,
    "Uid" TEXT NOT NULL,
    "Version" INTEGER NOT NULL,
    CONSTRAINT "CK_OutsideWorks_Back" CHECK ("Back" IS date("Back")),
    CONSTRAINT "CK_OutsideWorks_Forward" CHECK (("Promised" IS NULL OR "Promised" >= "Sent") AND ("Back" IS NULL OR "Back" >= "Sent")),
    CONSTRAINT "CK_OutsideWorks_Promised" CHECK ("Promised" IS date("Promised")),
    CONSTRAINT "CK_OutsideWorks_Sent" CHECK ("Sent" IS date("Sent")),
    CONSTRAINT "CK_OutsideWorks_What" CHECK (length(trim("What")) > 0),
    CONSTRAINT "FK_OutsideWorks_Jobs_JobId" FOREIGN KEY ("JobId") REFERENCES "Jobs" ("Id") ON DELETE RESTRICT,
    CONSTRAINT "FK_OutsideWorks_Suppliers_SupplierId" FOREIGN KEY ("SupplierId") REFERENCES "Suppliers" ("Id") ON DELETE RESTRICT
) STRICT;
CREATE TABLE IF NOT EXISTS "WorkEntries" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_WorkEntries" PRIMARY KEY AUTOINCREMENT,
    "JobId" INTEGER NOT NULL,
    "Date" TEXT NOT NULL,
    "Hours" TEXT NOT NULL,
    "Minutes" INTEGER NOT NULL,
    "Who" TEXT NOT NULL,
    "What" TEXT NOT NULL,
    "Uid" TEXT NOT NULL,
    "Version" INTEGER NOT NULL,
    CONSTRAINT "CK_WorkEntries_Date" CHECK ("Date" IS date("Date")),
    CONSTRAINT "CK_WorkEntries_Hours" CHECK (length(trim("Hours")) > 0),
    CONSTRAINT "CK_WorkEntries_Minutes" CHECK ("Minutes" BETWEEN 1 AND 1440),
    CONSTRAINT "FK_WorkEntries_Jobs_JobId" FOREIGN KEY ("JobId") REFERENCES "Jobs" ("Id") ON DELETE RESTRICT
) STRICT;
INSERT INTO WorkEntries VALUES(1,2,'2024-11-16','3 h 30 min',210,'Agnes','old lines off, new ones bent','01A2157D-DE7D-7D82-9560-43790D468673',0);
CREATE TABLE IF NOT EXISTS "Specs" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_Specs" PRIMARY KEY AUTOINCREMENT,
    "ComponentId" INTEGER NULL,
    "NumberSi" REAL NOT NULL,
    "NumberSource" TEXT NOT NULL,
    "NumberText" TEXT NOT NULL,
    "NumberUnit" TEXT NOT NULL,
    "Spec" TEXT NOT NULL,
    "VehicleId" INTEGER NULL,
    CONSTRAINT "CK_Specs_Altitude" CHECK ("Spec" <> 'Altitude' OR "NumberSi" BETWEEN -500.0 AND 6000.0),
    CONSTRAINT "CK_Specs_Bore" CHECK ("Spec" <> 'Bore' OR "NumberSi" BETWEEN 0.03 AND 0.4),
    CONSTRAINT "CK_Specs_Bump" CHECK ("Spec" <> 'Bump' OR "NumberSi" BETWEEN 0.0 AND 1.0),
    CONSTRAINT "CK_Specs_ClutchRating" CHECK ("Spec" <> 'ClutchRating' OR "NumberSi" BETWEEN 10.0 AND 10000.0),
    CONSTRAINT "CK_Specs_Correction" CHECK ("Spec" <> 'Correction' OR "NumberSi" BETWEEN 0.01 AND 100.0),
    CONSTRAINT "CK_Specs_CriticalAltitude" CHECK ("Spec" <> 'CriticalAltitude' OR "NumberSi" BETWEEN -500.0 AND 11000.0),
    CONSTRAINT "CK_Specs_DragArea" CHECK ("Spec" <> 'DragArea' OR "NumberSi" BETWEEN 0.2 AND 12.0),
    CONSTRAINT "CK_Specs_DrivenShare" CHECK ("Spec" <> 'DrivenShare' OR "NumberSi" BETWEEN 0.05 AND 1.0),
    CONSTRAINT "CK_Specs_Droop" CHECK ("Spec" <> 'Droop' OR "NumberSi" BETWEEN 0.0 AND 1.0),
    CONSTRAINT "CK_Specs_FrontAxleMass" CHECK ("Spec" <> 'FrontAxleMass' OR "NumberSi" BETWEEN 20.0 AND 40000.0),
    CONSTRAINT "CK_Specs_FrontPad" CHECK ("Spec" <> 'FrontPad' OR "NumberSi" BETWEEN -0.7853982 AND 0.7853982),
    CONSTRAINT "CK_Specs_FrontSprings" CHECK ("Spec" <> 'FrontSprings' OR "NumberSi" BETWEEN 0.3 AND 2.0),
    CONSTRAINT "CK_Specs_GravityHeight" CHECK ("Spec" <> 'GravityHeight' OR "NumberSi" BETWEEN 0.1 AND 3.0),
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
    CONSTRAINT "CK_Specs_Perches" CHECK ("Spec" <> 'Perches' OR "NumberSi" BETWEEN 0.3 AND 2.0),
    CONSTRAINT "CK_Specs_PilotBore" CHECK ("Spec" <> 'PilotBore' OR "NumberSi" BETWEEN 0.005 AND 0.1),
    CONSTRAINT "CK_Specs_PinionPlan" CHECK ("Spec" <> 'PinionPlan' OR "NumberSi" BETWEEN -0.7853982 AND 0.7853982),
    CONSTRAINT "CK_Specs_PinionSide" CHECK ("Spec" <> 'PinionSide' OR "NumberSi" BETWEEN -0.7853982 AND 0.7853982),
    CONSTRAINT "CK_Specs_PinionToPerch" CHECK ("Spec" <> 'PinionToPerch' OR "NumberSi" BETWEEN -0.7853982 AND 0.7853982),
    CONSTRAINT "CK_Specs_PitchCircle" CHECK ("Spec" <> 'PitchCircle' OR "NumberSi" BETWEEN 0.05 AND 0.4),
    CONSTRAINT "CK_Specs_PulsesPerTurn" CHECK ("Spec" <> 'PulsesPerTurn' OR "NumberSi" BETWEEN 0.01 AND 1000.0),
    CONSTRAINT "CK_Specs_RearAxleMass" CHECK ("Spec" <> 'RearAxleMass' OR "NumberSi" BETWEEN 20.0 AND 40000.0),
    CONSTRAINT "CK_Specs_RearPad" CHECK ("Spec" <> 'RearPad' OR "NumberSi" BETWEEN -0.7853982 AND 0.7853982),
    CONSTRAINT "CK_Specs_RearSprings" CHECK ("Spec" <> 'RearSprings' OR "NumberSi" BETWEEN 0.3 AND 2.0),
    CONSTRAINT "CK_Specs_RimWidth" CHECK ("Spec" <> 'RimWidth' OR "NumberSi" BETWEEN 0.05 AND 0.6),
    CONSTRAINT "CK_Specs_RollingResistance" CHECK ("Spec" <> 'RollingResistance' OR "NumberSi" BETWEEN 0.003 AND 0.4),
    CONSTRAINT "CK_Specs_SlipOut" CHECK ("Spec" <> 'SlipOut' OR "NumberSi" BETWEEN 0.0 AND 1.0),
    CONSTRAINT "CK_Specs_SlipStroke" CHECK ("Spec" <> 'SlipStroke' OR "NumberSi" BETWEEN 0.0 AND 1.0),
    CONSTRAINT "CK_Specs_Spec" CHECK ("Spec" IN ('TorquePoints', 'PeakTorque', 'PeakTorqueAt', 'PeakPower', 'PeakPowerAt', 'LowestPull', 'CriticalAltitude', 'PilotBore', 'StallSpeed', 'StallTorqueRatio', 'TorqueRating', 'Spigot', 'ClutchRating', 'PitchCircle', 'Bore', 'HubFaces', 'Droop', 'Bump', 'Perches', 'PinionToPerch', 'LoadedRadius', 'RimWidth', 'Offset', 'JointRating', 'SlipStroke', 'SlipOut', 'OutputSide', 'OutputPlan', 'PinionSide', 'PinionPlan', 'TurnsWanted', 'PulsesPerTurn', 'Correction', 'Mass', 'FrontAxleMass', 'RearAxleMass', 'DragArea', 'RollingResistance', 'DrivenShare', 'Altitude', 'GravityHeight', 'Wheelbase', 'FrontSprings', 'RearSprings', 'FrontPad', 'RearPad')),
    CONSTRAINT "CK_Specs_Spigot" CHECK ("Spec" <> 'Spigot' OR "NumberSi" BETWEEN 0.005 AND 0.1),
    CONSTRAINT "CK_Specs_StallSpeed" CHECK ("Spec" <> 'StallSpeed' OR "NumberSi" BETWEEN 0.0 AND 1000.0),
    CONSTRAINT "CK_Specs_StallTorqueRatio" CHECK ("Spec" <> 'StallTorqueRatio' OR "NumberSi" BETWEEN 1.0 AND 5.0),
    CONSTRAINT "CK_Specs_TorquePoints" CHECK ("Spec" <> 'TorquePoints' OR "NumberSi" BETWEEN 0.0 AND 5000.0),
    CONSTRAINT "CK_Specs_TorqueRating" CHECK ("Spec" <> 'TorqueRating' OR "NumberSi" BETWEEN 10.0 AND 100000.0),
    CONSTRAINT "CK_Specs_TurnsWanted" CHECK ("Spec" <> 'TurnsWanted' OR "NumberSi" BETWEEN 50.0 AND 1000000.0),
    CONSTRAINT "CK_Specs_Wheelbase" CHECK ("Spec" <> 'Wheelbase' OR "NumberSi" BETWEEN 1.0 AND 10.0),
    CONSTRAINT "FK_Specs_Components_ComponentId" FOREIGN KEY ("ComponentId") REFERENCES "Components" ("Id"),
    CONSTRAINT "FK_Specs_Vehicles_VehicleId" FOREIGN KEY ("VehicleId") REFERENCES "Vehicles" ("Id")
) STRICT;
INSERT INTO Specs VALUES(1,NULL,1.0700000000000000621,'Measured','1070 mm','mm','RearSprings',1);
INSERT INTO Specs VALUES(2,1,0.015050000000000000877,'Measured','15.05 mm','mm','PilotBore',NULL);
INSERT INTO Specs VALUES(3,2,0.014999999999999999444,'Measured','15.00 mm','mm','Spigot',NULL);
INSERT INTO Specs VALUES(4,3,1.0700000000000000621,'Measured','1070 mm','mm','Perches',NULL);
INSERT INTO Specs VALUES(5,4,1.070999999999999952,'Measured','1071 mm','mm','Perches',NULL);
INSERT INTO Specs VALUES(6,7,0.015050000000000000877,'Measured','15.05 mm','mm','PilotBore',NULL);
INSERT INTO Specs VALUES(7,8,0.014999999999999999444,'Measured','15.00 mm','mm','Spigot',NULL);
INSERT INTO Specs VALUES(8,14,188.0,'MakersData','1200:158 Nm; 2400:182 Nm; 3200:188 Nm; 5400:156 Nm','N·m','TorquePoints',NULL);
INSERT INTO Specs VALUES(9,14,0.015050000000000000877,'Measured','15.05 mm','mm','PilotBore',NULL);
INSERT INTO Specs VALUES(10,15,0.014999999999999999444,'Measured','15.00 mm','mm','Spigot',NULL);
INSERT INTO Specs VALUES(11,16,260.0,'MakersData','260 Nm','N·m','ClutchRating',NULL);
INSERT INTO Specs VALUES(12,16,0.014999999999999999444,'Measured','15.00 mm','mm','Spigot',NULL);
INSERT INTO Specs VALUES(13,19,870.0,'Tag','870','','TurnsWanted',NULL);
INSERT INTO Specs VALUES(14,21,0.015050000000000000877,'Measured','15.05 mm','mm','PilotBore',NULL);
INSERT INTO Specs VALUES(15,22,0.014999999999999999444,'Measured','15.00 mm','mm','Spigot',NULL);
INSERT INTO Specs VALUES(16,25,0.015050000000000000877,'Measured','15.05 mm','mm','PilotBore',NULL);
INSERT INTO Specs VALUES(17,26,0.014999999999999999444,'Measured','15.00 mm','mm','Spigot',NULL);
CREATE TABLE IF NOT EXISTS "Sessions" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_Sessions" PRIMARY KEY AUTOINCREMENT,
    "Align" TEXT NULL,
    "ComponentId" INTEGER NOT NULL,
    "Conditions" TEXT NOT NULL,
    "Construction" TEXT NULL,
    "Date" TEXT NOT NULL,
    "Gear" TEXT NULL,
    "Helper" TEXT NOT NULL,
    "Hub" TEXT NULL,
    "Loaded" INTEGER NULL,
    "Method" TEXT NOT NULL,
    "Notes" TEXT NOT NULL,
    "Pressure" TEXT NULL,
    "ReadTo" TEXT NULL,
    "Tape" TEXT NULL,
    "Uid" TEXT NOT NULL,
    "VehicleId" INTEGER NULL,
    "Version" INTEGER NOT NULL,
    "Wheels" TEXT NULL,
    CONSTRAINT "CK_Sessions_Construction" CHECK ("Construction" IN ('Radial', 'Bias')),
    CONSTRAINT "CK_Sessions_Date" CHECK ("Date" IS date("Date")),
    CONSTRAINT "CK_Sessions_Gear" CHECK (length(trim("Gear")) > 0),
    CONSTRAINT "CK_Sessions_gear_count" CHECK ("Method" <> 'gear count' OR ("Gear" IS NOT NULL AND "ReadTo" IS NOT NULL AND "Align" IS NOT NULL)),
    CONSTRAINT "CK_Sessions_Method" CHECK ("Method" IN ('turn count', 'gear count', 'roll-out')),
    CONSTRAINT "CK_Sessions_roll-out" CHECK ("Method" <> 'roll-out' OR ("Loaded" IS NOT NULL AND "Construction" IS NOT NULL AND "Tape" IS NOT NULL AND "Align" IS NOT NULL AND "Pressure" IS NOT NULL)),
    CONSTRAINT "CK_Sessions_turn_count" CHECK ("Method" <> 'turn count' OR ("Wheels" IS NOT NULL AND "ReadTo" IS NOT NULL AND "Align" IS NOT NULL AND "Hub" IS NOT NULL)),
    CONSTRAINT "CK_Sessions_Wheels" CHECK ("Wheels" IN ('OneHeld', 'Together', 'Each')),
    CONSTRAINT "FK_Sessions_Components_ComponentId" FOREIGN KEY ("ComponentId") REFERENCES "Components" ("Id") ON DELETE RESTRICT,
    CONSTRAINT "FK_Sessions_Vehicles_VehicleId" FOREIGN KEY ("VehicleId") REFERENCES "Vehicles" ("Id") ON DELETE RESTRICT
) STRICT;
INSERT INTO Sessions VALUES(1,'0.01',6,'shed floor, level, driver aboard','Radial','2024-06-01',NULL,'Piet Arlow',NULL,1,'roll-out','','2.4 bar',NULL,'2 mm','01A2157D-DCF4-7D65-9E87-67A549B9FD11',1,0,NULL);
INSERT INTO Sessions VALUES(2,'0.02',4,'on stands, left wheel held, chalk on the flange',NULL,'2024-10-26',NULL,'Piet Arlow','',NULL,'turn count','Done because the engine was far too busy on the first drive.',NULL,'0.25',NULL,'01A2157D-DD82-7C7F-9253-8886E4F6584D',1,0,'OneHeld');
INSERT INTO Sessions VALUES(3,'0.01',13,'loose wheel along the bench rail','Bias','2024-04-06',NULL,'',NULL,0,'roll-out','','26 psi',NULL,'2 mm','01A2157D-DF7E-7DC8-BE9B-2216FA41D66F',NULL,0,NULL);
INSERT INTO Sessions VALUES(4,'0.02',11,'rolled along the yard, both wheels on the ground',NULL,'2024-06-16',NULL,'Rufus Keel','',NULL,'turn count','',NULL,'0.25',NULL,'01A2157D-DF8B-761C-8AE1-A130F3ED6910',2,0,'Together');
INSERT INTO Sessions VALUES(5,'0.01',13,'same run along the yard','Bias','2024-06-16',NULL,'Rufus Keel',NULL,1,'roll-out','','26 psi',NULL,'2 mm','01A2157D-DF8F-75A3-AE1F-E70E7DF232F3',2,0,NULL);
INSERT INTO Sessions VALUES(6,'0.01',20,'level car park, half a tank, driver aboard','Radial','2024-05-04',NULL,'Dorrit Ames',NULL,1,'roll-out','','2.2 bar',NULL,'2 mm','01A2157D-E014-76B2-BD6D-91286F36CDFD',3,0,NULL);
INSERT INTO Sessions VALUES(7,'0.02',16,'on the bench, paper disc on the input',NULL,'2024-07-20','5','Piet Arlow',NULL,NULL,'gear count','',NULL,'0.1',NULL,'01A2157D-E019-7988-A55B-5AB2C1A16253',NULL,0,NULL);
INSERT INTO Sessions VALUES(8,'0.02',23,'alone, three turns before the light went',NULL,'2024-11-09',NULL,'','',NULL,'turn count','',NULL,'0.25',NULL,'01A2157D-E05D-742F-B285-8D3563AB9791',4,0,'OneHeld');
INSERT INTO Sessions VALUES(9,'0.01',24,'shed floor, shell without glass yet','Radial','2024-11-16',NULL,'Bastian Orme',NULL,1,'roll-out','','2.0 bar',NULL,'2 mm','01A2157D-E061-712B-8DDB-A4EDE5728AE7',4,0,NULL);
INSERT INTO Sessions VALUES(10,'0.01',32,'one loose wheel along the shed floor','Radial','2024-05-11',NULL,'',NULL,0,'roll-out','','3.5 bar',NULL,'2 mm','01A2157D-E0DF-712A-8362-7B222A4FD6BC',NULL,0,NULL);
INSERT INTO Sessions VALUES(11,'0.02',31,'transfer case in two-wheel drive, front on stands',NULL,'2024-10-06',NULL,'Ilse Marrick','',NULL,'turn count','',NULL,'0.25',NULL,'01A2157D-E0F8-7A9C-85ED-CA5CDE38C391',5,0,'OneHeld');
CREATE TABLE IF NOT EXISTS "Goals" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_Goals" PRIMARY KEY AUTOINCREMENT,
    "EngineSpeed" TEXT NULL,
    "EngineSpeedSi" REAL NULL,
    "Gear" TEXT NULL,
    "Gradient" TEXT NULL,
    "Kind" TEXT NOT NULL,
    "Limit" TEXT NULL,
    "Limited" TEXT NULL,
    "MostCurrency" TEXT NULL,
    "MostMinor" INTEGER NULL,
    "Speed" TEXT NULL,
    "SpeedSi" REAL NULL,
    "Tolerance" TEXT NULL,
    "Uid" TEXT NOT NULL,
    "VehicleId" INTEGER NOT NULL,
    "Version" INTEGER NOT NULL,
    CONSTRAINT "CK_Goals_budget" CHECK ("Kind" <> 'budget' OR ("MostMinor" IS NOT NULL)),
    CONSTRAINT "CK_Goals_cruise" CHECK ("Kind" <> 'cruise' OR ("Speed" IS NOT NULL AND "EngineSpeed" IS NOT NULL AND "Tolerance" IS NOT NULL AND "Gear" IS NOT NULL AND "SpeedSi" IS NOT NULL AND "EngineSpeedSi" IS NOT NULL)),
    CONSTRAINT "CK_Goals_EngineSpeedSi" CHECK ("EngineSpeedSi" > 0 AND "EngineSpeedSi" < 1000),
    CONSTRAINT "CK_Goals_hill" CHECK ("Kind" <> 'hill' OR ("Gradient" IS NOT NULL AND "Speed" IS NOT NULL AND "Gear" IS NOT NULL)),
    CONSTRAINT "CK_Goals_Kind" CHECK ("Kind" IN ('cruise', 'hill', 'limit', 'budget')),
    CONSTRAINT "CK_Goals_limit" CHECK ("Kind" <> 'limit' OR ("Limited" IS NOT NULL AND "Limit" IS NOT NULL)),
    CONSTRAINT "CK_Goals_Limited" CHECK ("Limited" IN ('HillStart', 'TopSpeed', 'OverallLow', 'TyreDiameter', 'TyreWidth', 'Track')),
    CONSTRAINT "CK_Goals_Most" CHECK (("MostMinor" IS NULL) + ("MostCurrency" IS NULL) IN (0, 2)),
    CONSTRAINT "CK_Goals_MostCurrency" CHECK ("MostCurrency" GLOB '[A-Z][A-Z][A-Z]'),
    CONSTRAINT "CK_Goals_MostMinor" CHECK ("MostMinor" BETWEEN -1000000000000000 AND 1000000000000000),
    CONSTRAINT "CK_Goals_SpeedSi" CHECK ("SpeedSi" > 0 AND "SpeedSi" < 1000),
    CONSTRAINT "FK_Goals_Vehicles_VehicleId" FOREIGN KEY ("VehicleId") REFERENCES "Vehicles" ("Id") ON DELETE RESTRICT
) STRICT;
INSERT INTO Goals VALUES(1,'2500 rpm',41.666666666666664297,'',NULL,'cruise',NULL,NULL,NULL,NULL,'100 km/h',27.777777777777778566,'100 rpm','01A2157D-D9B0-7C79-A412-B7232418429C',1,0);
INSERT INTO Goals VALUES(2,'2550 rpm',42.5,'',NULL,'cruise',NULL,NULL,NULL,NULL,'60 mph',26.822399999999998244,'','01A2157D-DEF3-72A9-BB6A-2521D4F29792',2,0);
INSERT INTO Goals VALUES(3,'2900 rpm',48.333333333333335702,'',NULL,'cruise',NULL,NULL,NULL,NULL,'70 mph',31.292799999999999726,'','01A2157D-DFA1-7558-AC24-1A93CF148A9C',3,0);
INSERT INTO Goals VALUES(4,'3000 rpm',50.0,'',NULL,'cruise',NULL,NULL,NULL,NULL,'100 km/h',27.777777777777778566,'150 rpm','01A2157D-E034-7DD7-8461-BF2C7AF73670',4,0);
INSERT INTO Goals VALUES(5,'2700 rpm',45.0,'',NULL,'cruise',NULL,NULL,NULL,NULL,'90 km/h',25.0,'at most','01A2157D-E067-7337-AC2F-342EB29F3B39',5,0);
INSERT INTO Goals VALUES(6,'2600 rpm',43.333333333333335702,'',NULL,'cruise',NULL,NULL,NULL,NULL,'95 km/h',26.388888888888889284,'','01A2157D-E0FD-7B03-9676-117AD12FA916',6,0);
CREATE TABLE IF NOT EXISTS "Components" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_Components" PRIMARY KEY AUTOINCREMENT,
    "BoughtEarliest" TEXT NULL,
    "BoughtLatest" TEXT NULL,
    "BoughtText" TEXT NULL,
    "Condition" TEXT NULL,
    "Construction" TEXT NULL,
    "ConverterLocksUp" INTEGER NULL,
    "Donor" TEXT NOT NULL,
    "DriveTeeth" INTEGER NULL,
    "DrivenTeeth" INTEGER NULL,
    "FrontDrive" TEXT NULL,
    "GearTeeth" TEXT NULL,
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
    "OverdriveRing" INTEGER NULL,
    "OverdriveSun" INTEGER NULL,
    "Ownership" TEXT NULL,
    "PassengerOnTruck" INTEGER NULL,
    "Per" TEXT NULL,
    "Pickup" TEXT NULL,
    "Pinion" INTEGER NULL,
    "PriceCurrency" TEXT NULL,
    "PriceMinor" INTEGER NULL,
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
    "SupplierId" INTEGER NULL,
    "TakenFromId" INTEGER NULL,
    "Thread" TEXT NULL,
    "TwinRear" INTEGER NULL,
    "Uid" TEXT NOT NULL,
    "Version" INTEGER NOT NULL,
    "WornSi" REAL NULL,
    "WornSource" TEXT NULL,
    "WornText" TEXT NULL,
    "WornUnit" TEXT NULL,
    CONSTRAINT "CK_Components_Bought" CHECK (("BoughtText" IS NOT NULL OR ("BoughtEarliest" IS NULL AND "BoughtLatest" IS NULL)) AND ("BoughtEarliest" IS NULL OR "BoughtLatest" IS NULL OR "BoughtEarliest" <= "BoughtLatest")),
    CONSTRAINT "CK_Components_BoughtEarliest" CHECK ("BoughtEarliest" IS date("BoughtEarliest")),
    CONSTRAINT "CK_Components_BoughtLatest" CHECK ("BoughtLatest" IS date("BoughtLatest")),
    CONSTRAINT "CK_Components_Condition" CHECK (length(trim("Condition")) > 0),
    CONSTRAINT "CK_Components_Construction" CHECK ("Construction" IN ('Radial', 'Bias')),
    CONSTRAINT "CK_Components_DrivenTeeth" CHECK ("DrivenTeeth" BETWEEN 3 AND 99),
    CONSTRAINT "CK_Components_DriveTeeth" CHECK ("DriveTeeth" BETWEEN 1 AND 60),
    CONSTRAINT "CK_Components_FrontDrive" CHECK ("FrontDrive" IN ('ThroughShaft', 'Declutch', 'CentreDifferential', 'ClutchPack')),
    CONSTRAINT "CK_Components_GearTeeth" CHECK (length(trim("GearTeeth")) > 0),
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
    CONSTRAINT "CK_Components_OverdriveRing" CHECK ("OverdriveRing" BETWEEN 4 AND 200),
    CONSTRAINT "CK_Components_OverdriveSun" CHECK ("OverdriveSun" BETWEEN 4 AND 200),
    CONSTRAINT "CK_Components_OverdriveTeeth" CHECK (("OverdriveRing" IS NULL) + ("OverdriveSun" IS NULL) IN (0, 2)),
    CONSTRAINT "CK_Components_Ownership" CHECK ("Ownership" IN ('Customers', 'Lent', 'CoreOwed')),
    CONSTRAINT "CK_Components_Per" CHECK ("Per" IN ('Kilometres', 'Miles')),
    CONSTRAINT "CK_Components_Pickup" CHECK ("Pickup" IN ('Propshaft', 'GearboxOutput', 'Wheel')),
    CONSTRAINT "CK_Components_Pinion" CHECK ("Pinion" BETWEEN 4 AND 200),
    CONSTRAINT "CK_Components_Price" CHECK (("PriceMinor" IS NULL) + ("PriceCurrency" IS NULL) IN (0, 2)),
    CONSTRAINT "CK_Components_PriceCurrency" CHECK ("PriceCurrency" GLOB '[A-Z][A-Z][A-Z]'),
    CONSTRAINT "CK_Components_PriceMinor" CHECK ("PriceMinor" BETWEEN -1000000000000000 AND 1000000000000000),
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
    CONSTRAINT "CK_Components_WornSource" CHECK ("WornSource" IN ('TeethCounted', 'Measured', 'MakersData', 'Tag', 'OwnersWord', 'Assumed')),
    CONSTRAINT "FK_Components_Donors_TakenFromId" FOREIGN KEY ("TakenFromId") REFERENCES "Donors" ("Id") ON DELETE RESTRICT,
    CONSTRAINT "FK_Components_Suppliers_SupplierId" FOREIGN KEY ("SupplierId") REFERENCES "Suppliers" ("Id") ON DELETE RESTRICT
) STRICT;
INSERT INTO Components VALUES(1,NULL,NULL,NULL,NULL,NULL,NULL,'Wexcombe delivery van, Tolland yard',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,10.833333333333333925,'Measured','650 rpm','rev/min',NULL,'engine',NULL,NULL,NULL,NULL,'Corvane 3.3 six','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,76.666666666666671405,'MakersData','4600 rpm','rev/min',NULL,NULL,'CV33-118204','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A2157D-D9F8-7AB7-9CD9-FEB34098F6F7',0,NULL,NULL,NULL,NULL);
INSERT INTO Components VALUES(2,NULL,NULL,NULL,NULL,NULL,NULL,'came with the engine',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'transmission',NULL,NULL,NULL,NULL,'Delmere D4 four-speed','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'D4-60921','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A2157D-DA5C-7374-8B1B-CA931DA8F8A9',0,NULL,NULL,NULL,NULL);
INSERT INTO Components VALUES(3,NULL,NULL,NULL,NULL,NULL,NULL,'came with the frame',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'axle',NULL,NULL,NULL,NULL,'Harrow axle, the frame''s own','Pinion chipped on two teeth; whines from 70 km/h.',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,13,NULL,NULL,NULL,NULL,NULL,NULL,43,NULL,'HR-3-0077','under the bench, left',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A2157D-DA89-7E06-BA3C-DD2A4464700C',0,NULL,NULL,NULL,NULL);
INSERT INTO Components VALUES(4,NULL,NULL,NULL,NULL,NULL,NULL,'Tolland yard, row 6, no vehicle with it',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'axle',NULL,NULL,NULL,NULL,'Harrow yard axle','Cover and tag look newer than the housing.',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'HR-7-4410','',NULL,NULL,NULL,NULL,NULL,3.8999999999999999111,'Tag','3.90','',NULL,NULL,NULL,NULL,NULL,'01A2157D-DACA-7FD9-B590-B6DE491F1DE4',0,NULL,NULL,NULL,NULL);
INSERT INTO Components VALUES(5,NULL,NULL,NULL,NULL,'Radial',NULL,'came with the frame',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'wheels',NULL,NULL,NULL,NULL,'Stavely 205/75R15 on steel','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'','','205/75R15',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A2157D-DACD-7433-9766-1C9F117F6DDA',0,NULL,NULL,NULL,NULL);
INSERT INTO Components VALUES(6,NULL,NULL,NULL,NULL,'Radial',NULL,'bought new',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'wheels',NULL,NULL,NULL,NULL,'Stavely 235/75R15 on steel','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'','','235/75R15 105S',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A2157D-DAFB-79CE-911B-80BFAF019E09',0,NULL,NULL,NULL,NULL);
INSERT INTO Components VALUES(7,NULL,NULL,NULL,NULL,NULL,NULL,'its own',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,12.5,'Measured','750 rpm','rev/min',NULL,'engine',NULL,NULL,NULL,NULL,'Corvane 2.1 four','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,86.666666666666671405,'OwnersWord','5200 rpm','rev/min',NULL,NULL,'CV21-7715','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A2157D-DEF5-798D-B7E8-01EACF89866E',0,NULL,NULL,NULL,NULL);
INSERT INTO Components VALUES(8,NULL,NULL,NULL,NULL,NULL,NULL,'its own',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'transmission',NULL,NULL,NULL,NULL,'Delmere D4 light','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'D4L-1123','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A2157D-DEF9-73F8-ABE7-91303C63AFD1',0,NULL,NULL,NULL,NULL);
INSERT INTO Components VALUES(9,NULL,NULL,NULL,NULL,NULL,NULL,'swap meet at Ferrow',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'overdrive',NULL,NULL,NULL,NULL,'Delmere step-up unit','',0.78000000000000002664,'MakersData','0.78','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'SU-338','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A2157D-DEFE-7336-AEB5-8F23DB9D00BF',0,NULL,NULL,NULL,NULL);
INSERT INTO Components VALUES(10,NULL,NULL,NULL,NULL,NULL,NULL,'its own',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'axle',NULL,NULL,NULL,NULL,'Harrow light axle, short','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'HR-L-209','rack B, bottom',NULL,NULL,NULL,NULL,NULL,4.2999999999999998223,'OwnersWord','4.3','',NULL,NULL,NULL,NULL,NULL,'01A2157D-DF13-784D-BCA9-423AFAA83D7A',0,NULL,NULL,NULL,NULL);
INSERT INTO Components VALUES(11,NULL,NULL,NULL,NULL,NULL,NULL,'saloon wreck at Ferrow',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'axle',NULL,NULL,NULL,NULL,'Harrow light axle, long','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'HR-L-311','',NULL,NULL,NULL,NULL,NULL,3.8999999999999999111,'Tag','3.90','',NULL,NULL,NULL,NULL,NULL,'01A2157D-DF16-7A5F-B848-059436A1B2F6',0,NULL,NULL,NULL,NULL);
INSERT INTO Components VALUES(12,NULL,NULL,NULL,NULL,NULL,NULL,'its own',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'propshaft',NULL,NULL,NULL,NULL,'Ottery''s own propshaft','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A2157D-DF19-75AB-BEAF-0C91DAB59BD3',0,NULL,NULL,NULL,NULL);
INSERT INTO Components VALUES(13,NULL,NULL,NULL,NULL,'Bias',NULL,'bought new',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'wheels',NULL,NULL,NULL,NULL,'Tarn 165/80-15 on wires','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'','','165/80-15',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A2157D-DF56-7BF8-B28C-85A672050532',0,NULL,NULL,NULL,NULL);
INSERT INTO Components VALUES(14,NULL,NULL,NULL,NULL,NULL,NULL,'its own',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,13.333333333333333925,'MakersData','800 rpm','rev/min',NULL,'engine',NULL,NULL,NULL,NULL,'Corvane 2.3 four','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,96.666666666666671405,'MakersData','5800 rpm','rev/min',NULL,NULL,'CV23-90411','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A2157D-DFA2-7EB7-A4E4-7E98771A8B63',0,NULL,NULL,NULL,NULL);
INSERT INTO Components VALUES(15,NULL,NULL,NULL,NULL,NULL,NULL,'its own',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'transmission',NULL,NULL,NULL,NULL,'Delmere D4, Tansy''s own','Jumps out of second.',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'D4-33870','rack A, top',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A2157D-DFB3-7BE0-BCC7-BAEA03B2FCEC',0,NULL,NULL,NULL,NULL);
INSERT INTO Components VALUES(16,NULL,NULL,NULL,NULL,NULL,NULL,'Tolland yard, from a late saloon',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'transmission',NULL,NULL,NULL,NULL,'Delmere D5 five-speed','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'D5-00214','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A2157D-DFB8-7B1F-BEB4-CF2E0F4289D4',0,NULL,NULL,NULL,NULL);
INSERT INTO Components VALUES(17,NULL,NULL,NULL,NULL,NULL,NULL,'its own',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'axle',NULL,NULL,NULL,NULL,'Harrow axle 41/11','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,11,NULL,NULL,NULL,NULL,NULL,NULL,41,NULL,'HR-5-2218','',NULL,NULL,NULL,NULL,NULL,3.7299999999999999822,'Tag','3.73','',NULL,NULL,NULL,NULL,NULL,'01A2157D-DFBE-76B2-9D0C-91D35C693023',0,NULL,NULL,NULL,NULL);
INSERT INTO Components VALUES(18,NULL,NULL,NULL,NULL,'Radial',NULL,'came with it',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'wheels',NULL,NULL,NULL,NULL,'Norwell 185/60R15 on alloys','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'','loft','185/60R15 84H',1.8400000000000000799,'MakersData','1.84 m','m',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A2157D-DFC1-74DA-9E1E-BBA3EA8C0936',0,NULL,NULL,NULL,NULL);
INSERT INTO Components VALUES(19,NULL,NULL,NULL,NULL,NULL,NULL,'its own',6,22,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'speedometer',NULL,NULL,NULL,NULL,'Tansy''s own speedometer','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'Miles',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A2157D-DFC3-72F8-9BFF-08EEE576E7E3',0,NULL,NULL,NULL,NULL);
INSERT INTO Components VALUES(20,NULL,NULL,NULL,NULL,'Radial',NULL,'bought new',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'wheels',NULL,NULL,NULL,NULL,'Norwell 195/65R15 on alloys','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'','','195/65R15 91H',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A2157D-DFE1-7828-AB93-EF348960F88D',0,0.0020000000000000000416,'Measured','2 mm','mm');
INSERT INTO Components VALUES(21,NULL,NULL,NULL,NULL,NULL,NULL,'Tolland yard',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,11.666666666666666074,'OwnersWord','700 rpm','rev/min',NULL,'engine',NULL,NULL,NULL,NULL,'Corvane 2.7 six','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,100.0,'MakersData','6000 rpm','rev/min',NULL,NULL,'CV27-40032','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A2157D-E035-796E-8EB9-D47F70C85038',0,NULL,NULL,NULL,NULL);
INSERT INTO Components VALUES(22,NULL,NULL,NULL,NULL,NULL,NULL,'Bastian''s shelf',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'transmission',NULL,NULL,NULL,NULL,'Delmere D4 close-ratio','The clutch disc came with the engine.',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'D4C-511','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A2157D-E039-7AAA-9EDF-2320D0D3AAC0',0,NULL,NULL,NULL,NULL);
INSERT INTO Components VALUES(23,NULL,NULL,NULL,NULL,NULL,NULL,'unknown, bought with the shell',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'axle',NULL,NULL,NULL,NULL,'Harrow narrow axle','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'HR-N-0815','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A2157D-E03D-70F4-95DC-003FC127C9C9',0,NULL,NULL,NULL,NULL);
INSERT INTO Components VALUES(24,NULL,NULL,NULL,NULL,'Radial',NULL,'bought new',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'wheels',NULL,NULL,NULL,NULL,'Norwell 185/70R14 on steel','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'','','185/70R14 88T',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A2157D-E040-70DC-9E3B-586AE533BA71',0,NULL,NULL,NULL,NULL);
INSERT INTO Components VALUES(25,NULL,NULL,NULL,NULL,NULL,NULL,'ground-power set, Ferrow',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,10.0,'Measured','600 rpm','rev/min',NULL,'engine',NULL,NULL,NULL,NULL,'Corvane 3.9 diesel','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,60.0,'MakersData','3600 rpm','rev/min',NULL,NULL,'CVD39-2260','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A2157D-E069-7F49-A120-EEAAA2CD8BD0',0,NULL,NULL,NULL,NULL);
INSERT INTO Components VALUES(26,NULL,NULL,NULL,NULL,NULL,NULL,'its own',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'transmission',NULL,NULL,NULL,NULL,'Delmere D4 heavy','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'D4H-902','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A2157D-E06C-7447-851F-54842209BA6F',0,NULL,NULL,NULL,NULL);
INSERT INTO Components VALUES(27,NULL,NULL,NULL,NULL,NULL,NULL,'its own',NULL,NULL,'Declutch',NULL,1.0,'MakersData','1.00','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'transfer case',2.3199999999999998401,'MakersData','2.32','','Marlow M2 transfer case','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'M2-4451','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A2157D-E071-7BBD-ABB6-E007C5CF9F05',0,NULL,NULL,NULL,NULL);
INSERT INTO Components VALUES(28,NULL,NULL,NULL,NULL,NULL,NULL,'its own',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'axle',NULL,NULL,NULL,NULL,'Harrow heavy rear 4.56','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,9,NULL,NULL,NULL,NULL,NULL,NULL,41,NULL,'HR-H-120','rack C',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A2157D-E097-7505-A07C-609845D94C40',0,NULL,NULL,NULL,NULL);
INSERT INTO Components VALUES(29,NULL,NULL,NULL,NULL,NULL,NULL,'its own',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'axle',NULL,NULL,NULL,NULL,'Harrow heavy front 4.56','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,9,NULL,NULL,NULL,NULL,NULL,NULL,41,NULL,'HR-HF-121','rack C',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A2157D-E099-7442-A8E4-82F482D51091',0,NULL,NULL,NULL,NULL);
INSERT INTO Components VALUES(30,NULL,NULL,NULL,NULL,NULL,NULL,'Tolland yard, matched pair',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'axle',NULL,NULL,NULL,NULL,'Harrow heavy rear 4.10','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,10,NULL,NULL,NULL,NULL,NULL,NULL,41,NULL,'HR-H-388','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A2157D-E09C-707B-BE21-AF97432D87A3',0,NULL,NULL,NULL,NULL);
INSERT INTO Components VALUES(31,NULL,NULL,NULL,NULL,NULL,NULL,'Tolland yard, matched pair',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'axle',NULL,NULL,NULL,NULL,'Harrow heavy front 4.10','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'HR-HF-389','',NULL,NULL,NULL,NULL,NULL,4.0999999999999996447,'Tag','4.10','',NULL,NULL,NULL,NULL,NULL,'01A2157D-E09E-7C52-85CB-71CEF15AF4BE',0,NULL,NULL,NULL,NULL);
INSERT INTO Components VALUES(32,NULL,NULL,NULL,NULL,'Radial',NULL,'bought new',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'wheels',NULL,NULL,NULL,NULL,'Tarn LT235/85R16 on steel','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'','','LT235/85R16 120/116Q',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A2157D-E0A0-718B-9443-8C14C853A04D',0,NULL,NULL,NULL,NULL);
INSERT INTO Components VALUES(33,NULL,NULL,NULL,NULL,NULL,NULL,'its own',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'engine',NULL,NULL,NULL,NULL,'Corvane 2.1 four, van''s own','Turns over by hand.',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A2157D-E0FF-713D-8DF5-8D34E9AA4E01',0,NULL,NULL,NULL,NULL);
INSERT INTO Components VALUES(34,NULL,NULL,NULL,NULL,NULL,NULL,'its own',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'transmission',NULL,NULL,NULL,NULL,'Delmere D4 column-shift','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A2157D-E100-7708-BC33-0FF10D1DB456',0,NULL,NULL,NULL,NULL);
INSERT INTO Components VALUES(35,NULL,NULL,NULL,NULL,NULL,NULL,'its own',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'axle',NULL,NULL,NULL,NULL,'van''s own axle, no tag','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A2157D-E103-76B2-825F-EE3C84FECF20',0,NULL,NULL,NULL,NULL);
DELETE FROM sqlite_sequence;
INSERT INTO sqlite_sequence VALUES('Fitments',36);
INSERT INTO sqlite_sequence VALUES('Vehicles',6);
INSERT INTO sqlite_sequence VALUES('Specs',17);
INSERT INTO sqlite_sequence VALUES('Sessions',11);
INSERT INTO sqlite_sequence VALUES('Goals',6);
INSERT INTO sqlite_sequence VALUES('Components',35);
INSERT INTO sqlite_sequence VALUES('Workshops',1);
INSERT INTO sqlite_sequence VALUES('Suppliers',2);
INSERT INTO sqlite_sequence VALUES('Notes',2);
INSERT INTO sqlite_sequence VALUES('Donors',1);
INSERT INTO sqlite_sequence VALUES('DonorPieces',3);
INSERT INTO sqlite_sequence VALUES('Traits',70);
INSERT INTO sqlite_sequence VALUES('Gears',29);
INSERT INTO sqlite_sequence VALUES('Readings',26);
INSERT INTO sqlite_sequence VALUES('RoadTests',1);
INSERT INTO sqlite_sequence VALUES('WantedParts',1);
INSERT INTO sqlite_sequence VALUES('WantedWindows',1);
INSERT INTO sqlite_sequence VALUES('Offers',2);
INSERT INTO sqlite_sequence VALUES('Jobs',2);
INSERT INTO sqlite_sequence VALUES('WorkEntries',1);
INSERT INTO sqlite_sequence VALUES('Costs',2);
INSERT INTO sqlite_sequence VALUES('Deadlines',1);
INSERT INTO sqlite_sequence VALUES('Decisions',1);
INSERT INTO sqlite_sequence VALUES('ShaftPieces',1);
CREATE UNIQUE INDEX "IX_Gears_TransmissionId_Ordinal" ON "Gears" ("TransmissionId", "Ordinal");
CREATE UNIQUE INDEX "IX_Readings_SessionId_Ordinal" ON "Readings" ("SessionId", "Ordinal");
CREATE UNIQUE INDEX "IX_ShaftPieces_PropshaftId_Ordinal" ON "ShaftPieces" ("PropshaftId", "Ordinal");
CREATE INDEX "IX_Fitments_ComponentId_FromDate" ON "Fitments" ("ComponentId", "FromDate");
CREATE UNIQUE INDEX "IX_Fitments_OnePartAtATime" ON "Fitments" ("VehicleId", "Position") WHERE "ToDate" IS NULL;
CREATE UNIQUE INDEX "IX_Fitments_OnePlaceAtATime" ON "Fitments" ("ComponentId") WHERE "ToDate" IS NULL;
CREATE UNIQUE INDEX "IX_Fitments_Uid" ON "Fitments" ("Uid");
CREATE INDEX "IX_Fitments_VehicleId_FromDate" ON "Fitments" ("VehicleId", "FromDate");
CREATE UNIQUE INDEX "IX_Vehicles_NameKey" ON "Vehicles" ("NameKey");
CREATE UNIQUE INDEX "IX_Vehicles_Uid" ON "Vehicles" ("Uid");
CREATE INDEX "IX_Attachments_AboutUid" ON "Attachments" ("AboutUid");
CREATE INDEX "IX_Attachments_Sha256" ON "Attachments" ("Sha256");
CREATE UNIQUE INDEX "IX_Attachments_Uid" ON "Attachments" ("Uid");
CREATE INDEX "IX_Costs_ComponentId" ON "Costs" ("ComponentId");
CREATE INDEX "IX_Costs_JobId" ON "Costs" ("JobId");
CREATE INDEX "IX_Costs_ReceiptId" ON "Costs" ("ReceiptId");
CREATE INDEX "IX_Costs_SupplierId" ON "Costs" ("SupplierId");
CREATE UNIQUE INDEX "IX_Costs_Uid" ON "Costs" ("Uid");
CREATE INDEX "IX_Costs_VehicleId_Date" ON "Costs" ("VehicleId", "Date");
CREATE INDEX "IX_Deadlines_Day" ON "Deadlines" ("Day");
CREATE UNIQUE INDEX "IX_Deadlines_Uid" ON "Deadlines" ("Uid");
CREATE INDEX "IX_Deadlines_VehicleId" ON "Deadlines" ("VehicleId");
CREATE UNIQUE INDEX "IX_Decisions_Uid" ON "Decisions" ("Uid");
CREATE INDEX "IX_Decisions_VehicleId_Date" ON "Decisions" ("VehicleId", "Date");
CREATE INDEX "IX_DonorPieces_ComponentId" ON "DonorPieces" ("ComponentId");
CREATE INDEX "IX_DonorPieces_DonorId" ON "DonorPieces" ("DonorId");
CREATE UNIQUE INDEX "IX_DonorPieces_Uid" ON "DonorPieces" ("Uid");
CREATE INDEX "IX_Donors_SellerId" ON "Donors" ("SellerId");
CREATE UNIQUE INDEX "IX_Donors_Uid" ON "Donors" ("Uid");
CREATE INDEX "IX_IdentityNumbers_ComponentId" ON "IdentityNumbers" ("ComponentId");
CREATE UNIQUE INDEX "IX_IdentityNumbers_Uid" ON "IdentityNumbers" ("Uid");
CREATE INDEX "IX_IdentityNumbers_VehicleId" ON "IdentityNumbers" ("VehicleId");
CREATE UNIQUE INDEX "IX_Jobs_Uid" ON "Jobs" ("Uid");
CREATE INDEX "IX_Jobs_VehicleId" ON "Jobs" ("VehicleId");
CREATE INDEX "IX_Jobs_WaitsForId" ON "Jobs" ("WaitsForId");
CREATE INDEX "IX_Notes_AboutUid_Date" ON "Notes" ("AboutUid", "Date");
CREATE UNIQUE INDEX "IX_Notes_Uid" ON "Notes" ("Uid");
CREATE INDEX "IX_OdometerChanges_Day_Order" ON "OdometerChanges" ("Day", "Order");
CREATE UNIQUE INDEX "IX_OdometerChanges_Uid" ON "OdometerChanges" ("Uid");
CREATE INDEX "IX_OdometerChanges_VehicleId" ON "OdometerChanges" ("VehicleId");
CREATE INDEX "IX_Offers_SupplierId" ON "Offers" ("SupplierId");
CREATE UNIQUE INDEX "IX_Offers_Uid" ON "Offers" ("Uid");
CREATE INDEX "IX_Offers_WantedPartId" ON "Offers" ("WantedPartId");
CREATE INDEX "IX_OutsideWorks_JobId" ON "OutsideWorks" ("JobId");
CREATE INDEX "IX_OutsideWorks_SupplierId" ON "OutsideWorks" ("SupplierId");
CREATE UNIQUE INDEX "IX_OutsideWorks_Uid" ON "OutsideWorks" ("Uid");
CREATE INDEX "IX_PlannedChanges_ComponentId" ON "PlannedChanges" ("ComponentId");
CREATE UNIQUE INDEX "IX_PlannedChanges_PlanId_Position" ON "PlannedChanges" ("PlanId", "Position");
CREATE UNIQUE INDEX "IX_Plans_Uid" ON "Plans" ("Uid");
CREATE INDEX "IX_Plans_VehicleId" ON "Plans" ("VehicleId");
CREATE UNIQUE INDEX "IX_Retorques_Uid" ON "Retorques" ("Uid");
CREATE INDEX "IX_Retorques_VehicleId" ON "Retorques" ("VehicleId");
CREATE UNIQUE INDEX "IX_RoadTests_Uid" ON "RoadTests" ("Uid");
CREATE INDEX "IX_RoadTests_VehicleId_Date" ON "RoadTests" ("VehicleId", "Date");
CREATE UNIQUE INDEX "IX_Suppliers_Uid" ON "Suppliers" ("Uid");
CREATE UNIQUE INDEX "IX_Traits_ComponentId_Trait" ON "Traits" ("ComponentId", "Trait");
CREATE UNIQUE INDEX "IX_WantedMustHaves_WantedPartId_Ordinal" ON "WantedMustHaves" ("WantedPartId", "Ordinal");
CREATE UNIQUE INDEX "IX_WantedParts_Uid" ON "WantedParts" ("Uid");
CREATE INDEX "IX_WantedParts_VehicleId" ON "WantedParts" ("VehicleId");
CREATE UNIQUE INDEX "IX_WantedWindows_WantedPartId_Ordinal" ON "WantedWindows" ("WantedPartId", "Ordinal");
CREATE INDEX "IX_WorkEntries_JobId_Date" ON "WorkEntries" ("JobId", "Date");
CREATE UNIQUE INDEX "IX_WorkEntries_Uid" ON "WorkEntries" ("Uid");
CREATE UNIQUE INDEX "IX_Workshops_Uid" ON "Workshops" ("Uid");
CREATE UNIQUE INDEX "IX_Specs_ComponentId_Spec" ON "Specs" ("ComponentId", "Spec");
CREATE UNIQUE INDEX "IX_Specs_VehicleId_Spec" ON "Specs" ("VehicleId", "Spec");
CREATE INDEX "IX_Sessions_ComponentId_Date" ON "Sessions" ("ComponentId", "Date");
CREATE UNIQUE INDEX "IX_Sessions_Uid" ON "Sessions" ("Uid");
CREATE INDEX "IX_Sessions_VehicleId_Date" ON "Sessions" ("VehicleId", "Date");
CREATE UNIQUE INDEX "IX_Goals_OneBudget" ON "Goals" ("VehicleId") WHERE "Kind" = 'budget';
CREATE UNIQUE INDEX "IX_Goals_OneHill" ON "Goals" ("VehicleId") WHERE "Kind" = 'hill';
CREATE UNIQUE INDEX "IX_Goals_OneLimitOfEach" ON "Goals" ("VehicleId", "Limited");
CREATE UNIQUE INDEX "IX_Goals_Uid" ON "Goals" ("Uid");
CREATE INDEX "IX_Goals_VehicleId" ON "Goals" ("VehicleId");
CREATE INDEX "IX_Components_SupplierId" ON "Components" ("SupplierId");
CREATE INDEX "IX_Components_TakenFromId" ON "Components" ("TakenFromId");
CREATE UNIQUE INDEX "IX_Components_Uid" ON "Components" ("Uid");
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
